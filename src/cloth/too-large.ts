import { type Box, boxHeight, boxOf, boxWidth } from '../geometry/box.ts';
import { ORIGIN, point, rotate } from '../geometry/point.ts';
import { SAME_POINT } from '../geometry/tolerance.ts';
import type { ClothLay } from './cloth-lay.ts';
import type { LayPiece } from './lay-pieces.ts';

/** A piece that this cloth has no room for, whatever else is moved. Lengths in mm. */
export interface TooLarge {
  readonly piece: LayPiece;
  /** What it takes along its grain, and across it. */
  readonly along: number;
  readonly across: number;
  /** There would be room for it, were its grain turned by a quarter. */
  readonly fitsAcross: boolean;
}

/** Of the pieces that found no place, those that are larger than the cloth itself however they may lie, each outline once. */
export const tooLarge = (lay: ClothLay): readonly TooLarge[] => {
  const grounds = groundsOf(lay);
  const fits = (piece: LayPiece, turn: number): boolean => {
    const box = boxOf(piece.polygon.map((p) => rotate(p, turn)));
    return grounds.some(
      (ground) =>
        boxWidth(box) <= boxWidth(ground) + SAME_POINT && boxHeight(box) <= boxHeight(ground) + SAME_POINT,
    );
  };
  const outlines = new Map(lay.left.map((one) => [one.piece, one]));
  return [...outlines.values()].flatMap((piece) => {
    if (piece.rotations.some((turn) => fits(piece, turn))) return [];
    const box = boxOf(piece.polygon);
    return [{ piece, along: boxWidth(box), across: boxHeight(box), fitsAcross: fits(piece, Math.PI / 2) }];
  });
};

/** What each stretch of the cloth lies within. */
const groundsOf = ({ scraps, remnant, width }: ClothLay): readonly Box[] =>
  scraps.length > 0
    ? scraps.map(({ scrap }) => boxOf(scrap.outline))
    : [boxOf([ORIGIN, point(remnant ?? Number.POSITIVE_INFINITY, width)])];
