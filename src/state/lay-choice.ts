import type { Placement } from '../nesting/task.ts';
import { allCloths, type Cloth } from '../pattern/piece.ts';

/** How many of a cap are cut from the same cloth at most: a whole band's. */
export const MOST_CUT = 20;

/** Which cloth is laid, what is cut from it together, and what has been put down by hand. Kept, and no part of the pattern. */
export interface LayChoice {
  readonly cloth: Cloth;
  /** How many of the cap on the table. */
  readonly here: number;
  /** How many of each cap of the shelf, by their numbers. */
  readonly besides: Readonly<Record<number, number>>;
  readonly pins: readonly Placement[];
}

export const usualLay: LayChoice = { cloth: 'outer', here: 1, besides: {}, pins: [] };

/** More than any lay has pieces. */
const MOST_PINS = 2000;

/** Reads it back, leaving out what is damaged, and caps that are not on the shelf. */
export const decodeLay = (data: unknown, shelf: readonly { readonly id: number }[]): LayChoice => {
  const { cloth, here, besides, pins } = {
    ...(data as Partial<Record<keyof LayChoice, unknown>> | null),
  };
  const counts = { ...(besides as Readonly<Record<number, unknown>> | undefined) };
  return {
    cloth: allCloths.find((one) => one === cloth) ?? usualLay.cloth,
    here: isCount(here) ? here : usualLay.here,
    besides: Object.fromEntries(
      shelf.flatMap(({ id }) => {
        const count = counts[id];
        return isCount(count) ? [[id, count]] : [];
      }),
    ),
    pins: Array.isArray(pins) ? pins.filter(isPlacement).slice(0, MOST_PINS) : usualLay.pins,
  };
};

const isCount = (n: unknown): n is number =>
  Number.isInteger(n) && (n as number) >= 1 && (n as number) <= MOST_CUT;

const isPlacement = (data: unknown): data is Placement => {
  const { piece, container, rotation, x, y } = {
    ...(data as Partial<Record<keyof Placement, unknown>> | null),
  };
  return (
    typeof piece === 'string' &&
    Number.isInteger(container) &&
    (container as number) >= 0 &&
    [rotation, x, y].every(Number.isFinite)
  );
};
