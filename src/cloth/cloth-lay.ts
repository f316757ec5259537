import type { Path } from '../geometry/path.ts';
import { add, type Point, point, rotate } from '../geometry/point.ts';
import { rotated, translated } from '../geometry/transform.ts';
import type { Layout } from '../nesting/layout.ts';
import type { Placement } from '../nesting/task.ts';
import type { Cloth } from '../pattern/piece.ts';
import type { ClothSpec } from './cloth.ts';
import type { LayPiece } from './lay-pieces.ts';

/** One outline where it lies on the cloth. */
export interface LaidPiece {
  readonly piece: LayPiece;
  readonly at: Placement;
}

/** A cutting lay: the pieces of one cloth on its length, mm. x runs along the cloth, y across from its lower edge, or from its fold. */
export interface ClothLay {
  readonly cloth: Cloth;
  /** As it lies on the table: half of the cloth's own where it is folded. */
  readonly width: number;
  readonly folded: boolean;
  /** Of cloth that the pieces reach over. */
  readonly length: number;
  /** What there is, where it is a remnant; null for cloth off the bolt. */
  readonly remnant: number | null;
  readonly laid: readonly LaidPiece[];
  /** What found no place. */
  readonly left: readonly LayPiece[];
  /** Part of the cloth's area under pieces. */
  readonly density: number;
}

export const clothLay = (
  cloth: Cloth,
  { width, folded, length }: ClothSpec,
  pieces: readonly LayPiece[],
  layout: Layout,
): ClothLay => {
  const byId = new Map(pieces.map((piece) => [piece.id, piece]));
  const find = (id: string): readonly LayPiece[] => (byId.has(id) ? [byId.get(id)!] : []);
  return {
    cloth,
    width: folded ? width / 2 : width,
    folded,
    length: layout.length ?? 0,
    remnant: length,
    laid: layout.placements.flatMap((at) => find(at.piece).map((piece) => ({ piece, at }))),
    left: layout.unplaced.flatMap(find),
    density: layout.density,
  };
};

/** The cut line where it lies. */
export const laidCut = ({ piece, at }: LaidPiece): Path =>
  translated(rotated(piece.cut, at.rotation), point(at.x, at.y));

/** Its corners where they lie. */
export const laidPolygon = ({ piece, at }: LaidPiece): readonly Point[] =>
  piece.polygon.map((p) => add(rotate(p, at.rotation), point(at.x, at.y)));

/** Where its name has room where it lies. */
export const laidName = ({ piece, at }: LaidPiece): Point =>
  add(rotate(piece.nameAt, at.rotation), point(at.x, at.y));
