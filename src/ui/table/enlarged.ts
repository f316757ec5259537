import type { PieceDrawing, TextMark } from '../../drawing/drawing.ts';
import { findRoom, type Room, roomOf } from '../../drawing/room.ts';
import { segment, segmentsOf } from '../../drawing/segment.ts';
import { blockSize } from '../../drawing/text-block.ts';
import { boundsOf } from '../../geometry/bounds.ts';
import { type Box, boxesMeet, boxUnion, boxWidth } from '../../geometry/box.ts';
import { add, heading, point, scale } from '../../geometry/point.ts';

/** Kept free between a name and a grainline or a stitch line, in ems of the name. */
const CLEAR = 0.4;

/**
 * A text set larger than on paper (em in mm) so that it can be read from afar: about the middle of where it stood. A name
 * stands between the stitch lines and beside the grainline where there is room, or else at least inside the sides of its piece;
 * it is left out where it is wider than the piece.
 */
export const enlarged = (mark: TextMark, size: number, drawing: PieceDrawing): TextMark | null => {
  const shown = centred(mark, size);
  if (mark.role !== 'title' || shown.angle !== 0) return shown;
  const { width, height } = blockSize(shown);
  const room = findRoom(roomIn(drawing), { width: width + 2 * CLEAR * size, height }, shown.at);
  if (room) return { ...shown, at: room };
  const { min, max } = drawing.bounds;
  // Would it hang over both sides of its piece?
  if (width > boxWidth(drawing.bounds)) return null;
  const kept = (x: number): number => Math.min(Math.max(x, min.x + width / 2), max.x - width / 2);
  const { y } = shown.at;
  const around = (x: number): Box => ({
    min: point(x - width / 2, y - height / 2),
    max: point(x + width / 2, y + height / 2),
  });
  const x = kept(shown.at.x);
  const grain = grainOf(drawing);
  if (!boxesMeet(around(x), grain)) return { ...shown, at: point(x, y) };
  // To the side of the grainline that is nearer, if it can stand there whole.
  const aside = width / 2 + CLEAR * size;
  const places = [grain.min.x - aside, grain.max.x + aside]
    .filter((place) => kept(place) === place)
    .sort((a, b) => Math.abs(a - x) - Math.abs(b - x));
  return { ...shown, at: point(places[0] ?? x, y) };
};

/** Rooms that were found, by their drawings: one that has not changed is asked at every frame. */
const rooms = new WeakMap<PieceDrawing, Room>();

/** Between the cut lines of a piece, clear of its stitch line and its grainline. */
const roomIn = (drawing: PieceDrawing): Room => {
  const known = rooms.get(drawing);
  if (known) return known;
  const { min, max } = grainOf(drawing);
  const inTheWay = drawing.marks.flatMap((m) =>
    m.kind === 'line' && m.role === 'stitch' ? segmentsOf(m.path) : [],
  );
  const room = roomOf(segmentsOf(drawing.silhouette), [...inTheWay, segment(min, max)]);
  rooms.set(drawing, room);
  return room;
};

const grainOf = (drawing: PieceDrawing): Box =>
  boxUnion(drawing.marks.flatMap((m) => (m.kind === 'line' && m.role === 'grain' ? [boundsOf(m.path)] : [])));

/** The same text, larger, about the middle of where it stood. */
const centred = (mark: TextMark, size: number): TextMark => {
  if (mark.align === 'middle') return { ...mark, size };
  const half = (blockSize(mark).width / 2) * (mark.align === 'start' ? 1 : -1);
  return { ...mark, size, align: 'middle', at: add(mark.at, scale(heading(mark.angle), half)) };
};
