import { isClosed, polygon } from '../../geometry/path.ts';
import { between, type Point, point } from '../../geometry/point.ts';
import type { LineMark } from '../drawing.ts';

/** What is left of a small mark of straight lines to the right of x = 0: all, part or nothing. */
export const rightOfFoldOnly = (mark: LineMark): LineMark[] => {
  const corners = mark.path.map((curve) => curve.from);
  if (mark.path.every(({ from, to }) => from.x >= 0 && to.x >= 0)) return [mark];
  // A stem or a tick stands on the fold or beside it: it is not worth a part.
  if (!isClosed(mark.path)) return corners.some(({ x }) => x > 0) ? [mark] : [];
  const kept = rightHalf(corners);
  return kept.length < 3 ? [] : [{ ...mark, path: polygon(kept) }];
};

/** The corners of a polygon's part with x ≥ 0. */
const rightHalf = (corners: readonly Point[]): Point[] =>
  corners.flatMap((from, i) => {
    const to = corners[(i + 1) % corners.length]!;
    const kept = from.x >= 0 ? [from] : [];
    if (from.x < 0 === to.x < 0) return kept;
    const { y } = between(from, to, from.x / (from.x - to.x));
    return [...kept, point(0, y)];
  });
