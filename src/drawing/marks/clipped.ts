import { cutPolygon } from '../../geometry/clip.ts';
import { isClosed, polygon } from '../../geometry/path.ts';
import type { LineMark } from '../drawing.ts';

/** What is left of a small mark of straight lines to the right of x = 0: all, part or nothing. */
export const rightOfFoldOnly = (mark: LineMark): LineMark[] => {
  const corners = mark.path.map((curve) => curve.from);
  if (mark.path.every(({ from, to }) => from.x >= 0 && to.x >= 0)) return [mark];
  // A stem or a tick stands on the fold or beside it: it is not worth a part.
  if (!isClosed(mark.path)) return corners.some(({ x }) => x > 0) ? [mark] : [];
  const kept = cutPolygon(corners, ({ x }) => x);
  return kept.length < 3 ? [] : [{ ...mark, path: polygon(kept) }];
};
