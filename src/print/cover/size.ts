import { inches } from '../../units.ts';
import type { Size } from '../sheet-size.ts';

/** The test squares, mm: one for either ruler. */
export const SQUARE_MM = 100;
export const SQUARE_INCH = inches(4);
/** Between the parts of the first sheet, mm. */
export const GAP = 6;
/** The heading over them: the cap, then whose and when. */
export const HEAD = 17;

const STACKED: Size = { width: SQUARE_INCH, height: HEAD + SQUARE_MM + GAP + SQUARE_INCH };
const BESIDE: Size = { width: SQUARE_MM + GAP + SQUARE_INCH, height: HEAD + SQUARE_INCH };

/** A free part of the first sheet: its upper left corner, and how far it goes right and down, mm. */
export interface Region extends Size {
  readonly left: number;
  readonly top: number;
}

/** Where the squares lie on a first sheet of a size, and what is left free beside and below them. */
export interface CoverPlan {
  readonly stacked: boolean;
  readonly beside: Region;
  readonly below: Region;
}

/** How the squares lie one under the other where there is room for that and a map, else side by side. */
export const coverPlan = (size: Size): CoverPlan => {
  const stacked = planOf(size, STACKED);
  return fits(size, STACKED) && hasRoom(stacked) ? stacked : planOf(size, BESIDE);
};

/** Whether the squares and the sheet map find room on a sheet of a size. */
export const coverFits = (size: Size): boolean =>
  [STACKED, BESIDE].some((squares) => fits(size, squares) && hasRoom(planOf(size, squares)));

const fits = (size: Size, squares: Size): boolean =>
  size.width >= squares.width && size.height >= squares.height;

const planOf = (size: Size, squares: Size): CoverPlan => {
  const left = squares.width + GAP;
  const foot = size.height - squares.height - GAP;
  return {
    stacked: squares === STACKED,
    beside: { left, top: size.height - HEAD, width: size.width - left, height: size.height - HEAD },
    below: { left: 0, top: foot, width: squares.width, height: foot },
  };
};

const hasRoom = ({ beside, below }: CoverPlan): boolean => isUseful(beside) || isUseful(below);

/** The least that a list or a map can be set in, mm. */
const USEFUL: Size = { width: 40, height: 32 };

export const isUseful = ({ width, height }: Size): boolean =>
  width >= USEFUL.width && height >= USEFUL.height;
