import { inches } from '../../units.ts';
import type { Size } from '../sheet-size.ts';

/** The test squares, mm: one for either ruler. */
export const SQUARE_MM = 100;
export const SQUARE_INCH = inches(4);
/** Between the parts of the first sheet, mm. */
export const GAP = 6;
/** The heading over them: the cap, then whose and when. */
export const HEAD = 17;
/** The narrowest column that holds the list of pieces. */
const COLUMN = 50;

/** The least that the first sheet can be set in, mm: the squares one under the other, or side by side. */
export const COVER_LEAST: readonly Size[] = [
  { width: SQUARE_INCH + GAP + COLUMN, height: HEAD + SQUARE_MM + GAP + SQUARE_INCH },
  { width: SQUARE_MM + GAP + SQUARE_INCH + GAP + COLUMN, height: HEAD + SQUARE_INCH + GAP + 30 },
];
