import type { PieceDrawing, TextMark } from '../drawing/drawing.ts';
import { type Box, boxHeight, boxWidth } from '../geometry/box.ts';
import { type Point, point } from '../geometry/point.ts';
import { bestSpot, crowdWithin } from './crowd.ts';
import type { Size } from './sheet-size.ts';

/** What two boxes share. Where they do not meet it is turned inside out. */
export const boxShared = (a: Box, b: Box): Box => ({
  min: point(Math.max(a.min.x, b.min.x), Math.max(a.min.y, b.min.y)),
  max: point(Math.min(a.max.x, b.max.x), Math.min(a.max.y, b.max.y)),
});

/**
 * The centre of a free rectangle on the part of a piece that a box shows: inside the outline, clear of the piece's
 * lines and of some texts, as near as may be to where it is wanted. Null where there is none.
 */
export const roomOnSheet = (
  piece: PieceDrawing,
  texts: readonly TextMark[],
  box: Box,
  block: Size,
  wanted: Point,
): Point | null => {
  const part = boxShared(piece.bounds, box);
  // Not even without any lines?
  if (!(boxWidth(part) >= block.width && boxHeight(part) >= block.height)) return null;
  const lines = piece.marks.filter((mark) => mark.kind === 'line');
  const crowd = crowdWithin(part, piece.silhouette, [...lines, ...texts]);
  const corner = point(wanted.x - block.width / 2, wanted.y - block.height / 2);
  const spot = bestSpot(crowd, block, corner);
  if (spot === null || spot.weight > 0) return null;
  return point(spot.at.x + block.width / 2, spot.at.y + block.height / 2);
};
