import { boxHeight, boxOf, boxWidth } from '../geometry/box.ts';
import { rotate } from '../geometry/point.ts';
import type { Placement, Strip } from '../nesting/task.ts';
import type { LayPiece } from './lay-pieces.ts';

/**
 * The foremost place on the fold, which is the lower side of the strip, for each half that has one: the highest first,
 * clear of what has been pinned already, mm. Lengths are those of boxes, so that a tight gap is passed over.
 */
export const onFold = (
  pieces: readonly LayPiece[],
  { width, length }: Strip,
  spacing: number,
  pinned: readonly Placement[],
): readonly Placement[] => {
  const taken = [...stretchesOf(pieces, pinned)];
  return pieces
    .filter(({ id, layers }) => layers === 'on the fold' && !pinned.some(({ piece }) => piece === id))
    .map((piece) => ({ piece, box: boxOf(piece.polygon) }))
    .toSorted((a, b) => boxHeight(b.box) - boxHeight(a.box))
    .flatMap(({ piece, box }) => {
      const near = taken.filter(({ low }) => low < boxHeight(box) + spacing);
      const from = firstGap(near, boxWidth(box), spacing);
      const to = from + boxWidth(box);
      if (!(to <= (length ?? Number.POSITIVE_INFINITY) && boxHeight(box) <= width)) return [];
      taken.push({ from, to, low: 0 });
      return [{ piece: piece.id, container: 0, rotation: 0, x: from - box.min.x, y: -box.min.y }];
    });
};

/** A half slides along the fold: off it, it would be half a piece. Everything else lies where it is put. */
export const keptOnFold = ({ layers, polygon }: LayPiece, at: Placement): Placement =>
  layers === 'on the fold' ? { ...at, rotation: 0, y: -boxOf(polygon).min.y } : at;

/** Of the cloth's length, from here to there, and how near it comes to the fold, mm. */
interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly low: number;
}

/** What pinned pieces take up. */
const stretchesOf = (pieces: readonly LayPiece[], pinned: readonly Placement[]): readonly Stretch[] =>
  pinned.flatMap(({ piece: id, rotation, x, y }) => {
    const piece = pieces.find((one) => one.id === id);
    if (piece === undefined) return [];
    const { min, max } = boxOf(piece.polygon.map((p) => rotate(p, rotation)));
    return [{ from: min.x + x, to: max.x + x, low: min.y + y }];
  });

/** The start of the first stretch of a length that keeps clear of what is taken, mm. */
const firstGap = (taken: readonly Stretch[], length: number, spacing: number): number => {
  let start = 0;
  for (const { from, to } of taken.toSorted((a, b) => a.from - b.from))
    if (from - spacing < start + length && to + spacing > start) start = to + spacing;
  return start;
};
