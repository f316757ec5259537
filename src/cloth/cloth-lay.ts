import { boxOf } from '../geometry/box.ts';
import type { Path } from '../geometry/path.ts';
import { add, heading, ORIGIN, type Point, point } from '../geometry/point.ts';
import { rotated, translated } from '../geometry/transform.ts';
import type { Layout } from '../nesting/layout.ts';
import type { Placement } from '../nesting/task.ts';
import type { Cloth } from '../pattern/piece.ts';
import type { Scrap } from './cloth.ts';
import type { LayPiece } from './lay-pieces.ts';
import type { LayCap, LayWish } from './lay-wish.ts';
import { liesFolded } from './lies-folded.ts';
import { washGrowth } from './shrinkage.ts';

/** One outline where it lies on the cloth. */
export interface LaidPiece {
  readonly piece: LayPiece;
  readonly at: Placement;
  /** Where its scrap stands on the table; none for a width of cloth. */
  readonly shift: Point;
}

/** A cutting lay: the pieces that some caps take of one cloth, on its length, mm. x runs along the cloth, y across from its lower edge, or from its fold. */
export interface ClothLay {
  readonly cloth: Cloth;
  /** What is cut together. */
  readonly caps: readonly Pick<LayCap, 'name' | 'count'>[];
  /** As it lies on the table: half of the cloth's own where it is folded. */
  readonly width: number;
  readonly folded: boolean;
  /** Of cloth that the pieces reach over. */
  readonly length: number;
  /** What has to be bought for that length: more where the cloth is washed before it is cut. */
  readonly bought: number;
  /** What there is, where it is a remnant; null for cloth off the bolt, or scraps. */
  readonly remnant: number | null;
  /** The scraps side by side; none where a width of cloth is laid on. */
  readonly scraps: readonly PlacedScrap[];
  readonly laid: readonly LaidPiece[];
  /** What found no place. */
  readonly left: readonly LayPiece[];
  /** Part of the cloth's area under pieces. */
  readonly density: number;
}

/** A scrap where it stands on the table, mm. */
export interface PlacedScrap {
  readonly scrap: Scrap;
  readonly shift: Point;
}

/** Between two scraps on the table, mm. */
const APART = 40;

/** Scraps in a row, their lower edges level. */
const inRow = (scraps: readonly Scrap[]): readonly PlacedScrap[] => {
  let reached = 0;
  return scraps.map((scrap) => {
    const { min, max } = boxOf(scrap.outline);
    const shift = point(reached - min.x, -min.y);
    reached += max.x - min.x + APART;
    return { scrap, shift };
  });
};

export const clothLay = (
  { caps, cloth, spec }: LayWish,
  pieces: readonly LayPiece[],
  layout: Layout,
): ClothLay => {
  const { width, length, scraps } = spec;
  const folded = liesFolded(spec);
  const row = inRow(scraps);
  const box = boxOf(row.flatMap(({ scrap, shift }) => scrap.outline.map((p) => add(p, shift))));
  const reached = scraps.length > 0 ? box.max.x : (layout.length ?? 0);
  const byId = new Map(pieces.map((piece) => [piece.id, piece]));
  const find = (id: string): readonly LayPiece[] => (byId.has(id) ? [byId.get(id)!] : []);
  return {
    cloth,
    caps: caps.map(({ name, count }) => ({ name, count })),
    width: scraps.length > 0 ? box.max.y : folded ? width / 2 : width,
    folded,
    length: reached,
    bought: reached * washGrowth(spec).along,
    remnant: scraps.length > 0 ? null : length,
    scraps: row,
    laid: layout.placements.flatMap((at) =>
      find(at.piece).map((piece) => ({ piece, at, shift: row[at.container]?.shift ?? ORIGIN })),
    ),
    left: layout.unplaced.flatMap(find),
    density: layout.density,
  };
};

/** The lay with one piece where a hand has put it, whatever lies there. */
export const withPlacement = (lay: ClothLay, at: Placement): ClothLay => ({
  ...lay,
  laid: lay.laid.map((one) =>
    one.piece.id === at.piece ? { ...one, at, shift: lay.scraps[at.container]?.shift ?? ORIGIN } : one,
  ),
});

/** The cut line where it lies. */
export const laidCut = ({ piece, at, shift }: LaidPiece): Path =>
  translated(rotated(piece.cut, at.rotation), point(at.x + shift.x, at.y + shift.y));

/** Its corners where they lie. */
export const laidPolygon = ({ piece, at, shift }: LaidPiece): readonly Point[] => {
  const { x: c, y: s } = heading(at.rotation);
  const [dx, dy] = [at.x + shift.x, at.y + shift.y];
  return piece.polygon.map(({ x, y }) => point(x * c - y * s + dx, x * s + y * c + dy));
};
