import type { Head } from './style.ts';

/** Girths at the lower edge of a cap, mm. */
export interface Opening {
  /** Inside the finished cap. */
  readonly finished: number;
  /** Along the shell's stitch line: longer by the cloth that lies inside it. */
  readonly shell: number;
  /** Along that of what lies against the head. */
  readonly inner: number;
  /** Along the lining's. */
  readonly lining: number;
}

export const openingOf = ({ girth, turn }: Head, ease: number): Opening => {
  const finished = girth + ease;
  return {
    finished,
    shell: finished + (turn?.shell ?? 0),
    inner: finished + (turn?.inner ?? 0),
    lining: finished + (turn?.lining ?? 0),
  };
};
