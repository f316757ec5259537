import type { Cloth, Piece, SeamKind } from '../../../pattern/piece.ts';
import type { EdgeUse } from '../../../pattern/seam.ts';
import type { SideSlope } from './side-slope.ts';

/** In how many pieces a side band goes round: one with its seam at the centre back, halves with side seams, quarters. */
export type SideBandPieces = '1' | '2' | '4';

export interface SideBandWish {
  readonly id: string;
  readonly name: string;
  readonly cloth: Cloth;
  readonly slope: SideSlope;
  readonly pieces: SideBandPieces;
  /** What the lower edge is sewn as; `band` where left out. */
  readonly lower?: SeamKind;
  /** What else is cut to the same outline. */
  readonly inside?: Cloth | undefined;
  /** Where what is sewn to the lower edge has seams, in parts of the girth from the centre back. */
  readonly seamsBelow?: readonly number[];
  /** What the arithmetic calls the girth of what the lower edge is sewn to; the finished girth where left out. */
  readonly girthName?: string;
  /** By what part the lower edge is longer than what it is sewn to; 0 for a plain seam. */
  readonly gather: number;
  /** Pleats in each quarter of the lower edge that take up what is gathered otherwise; 0 for none. */
  readonly pleats: number;
}

/** The side band's pieces and how they go round, from the centre back to the wearer's right (counter-clockwise from above). */
export interface SideBand {
  readonly pieces: readonly Piece[];
  /** The upper and lower edges all the way round, starting and ending at the centre back. */
  readonly top: readonly EdgeUse[];
  readonly bottom: readonly EdgeUse[];
  /** The short seams between neighbours. */
  readonly joins: readonly { readonly name: string; readonly a: EdgeUse; readonly b: EdgeUse }[];
}

/**
 * Whole with its seam at the centre back, halves, four quarters of one shape, or front and back quarters in mirrored pairs
 * where the two are not the same.
 */
export type SideBandScheme = 'whole' | 'halves' | 'quarters' | 'pairs';

export const sideBandScheme = (pieces: SideBandPieces, tilt: number, pleats: number): SideBandScheme => {
  if (pieces === '1') return 'whole';
  if (pieces === '2') return 'halves';
  return tilt !== 0 || pleats > 0 ? 'pairs' : 'quarters';
};

/** Whether the middle of a quarter's lower edge does not vanish in a pleat. */
export const middleIsFree = (pleats: number): boolean => pleats % 2 === 0;
