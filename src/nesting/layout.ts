import type { Placement } from './task.ts';

/** An answer to a task. */
export interface Layout {
  /** The pieces that found a place, pinned ones among them, in the order of the task. */
  readonly placements: readonly Placement[];
  /** The pieces that found none. */
  readonly unplaced: readonly string[];
  /** From the start of the strip to the end of the last piece, mm; null on areas. */
  readonly length: number | null;
  /** Area of the pieces laid, as a part of the strip as far as it is used, or of the areas that are used. */
  readonly density: number;
}
