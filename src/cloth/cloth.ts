import type { Point } from '../geometry/point.ts';
import type { Cloth } from '../pattern/piece.ts';

/** As many scraps of a cloth, and corners of a scrap or a flaw, as are kept. */
export const MOST_SCRAPS = 20;
export const MOST_CORNERS = 60;

/** A left-over piece of cloth of any shape, its length along x. Corners in mm, in order round it. */
export interface Scrap {
  readonly outline: readonly Point[];
  /** Holes, stains and worn places. */
  readonly flaws: readonly (readonly Point[])[];
}

/** What is known of one cloth. Lengths in mm, shrinkage in parts of one. */
export interface ClothSpec {
  /** The kind it was taken from, or 'other'. */
  readonly kind: string;
  /** One layer, lightly pressed; 0 where it is not to count. */
  readonly thickness: number;
  /** Usable, between the selvedges. */
  readonly width: number;
  /** A pile, or a print with one way up: all pieces lie the same way. */
  readonly nap: boolean;
  /** Pieces may lie across the cloth, their grain along the weft, where it shrinks alike both ways. */
  readonly cross: boolean;
  /** Pieces may lie at 45° to the grain where that saves cloth and it shrinks alike both ways. */
  readonly bias: boolean;
  /** What washing takes off, along the selvedge and across. */
  readonly shrinkLength: number;
  readonly shrinkWidth: number;
  /** Washed before cutting: it has shrunk already. */
  readonly washed: boolean;
  /** Laid double, folded along its length: pairs are cut at once. */
  readonly folded: boolean;
  /** What there is of it: as much as is needed, or a piece of this length, mm. */
  readonly length: number | null;
  /** Left-over pieces to be used instead of a width: each an outline, with what is spoilt in it. None: the width counts. */
  readonly scraps: readonly Scrap[];
  /** A metre, in the user's own money; null where it is not known. */
  readonly price: number | null;
}

/** Every cloth that a cap can be cut from. */
export type Cloths = Readonly<Record<Cloth, ClothSpec>>;
