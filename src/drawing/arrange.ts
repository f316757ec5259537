import { boxHeight, boxWidth } from '../geometry/box.ts';
import { type Point, point } from '../geometry/point.ts';
import type { PieceDrawing } from './drawing.ts';

/** A drawing and where its origin lies on the table, mm. */
export interface Placed {
  readonly drawing: PieceDrawing;
  readonly at: Point;
}

/** Between neighbours in a row, and between rows, mm. */
const BESIDE = 20;
const BELOW = 18;
/** The most pieces in one row. */
const MOST = 4;

/**
 * Lays the pieces on the table, first row at the top, flush left: outer cloth above lining, broad pieces together,
 * every strip in a row of its own. Rows follow from what the pieces are, never from their sizes, so that a piece
 * stays in its row while a slider moves.
 */
export const arrange = (drawings: readonly PieceDrawing[]): Placed[] => {
  const placed: Placed[] = [];
  let top = 0;
  for (const row of rowsOf(drawings)) {
    const tall = Math.max(...row.map((d) => boxHeight(d.bounds)));
    let x = 0;
    for (const drawing of row) {
      const { min, max } = drawing.bounds;
      placed.push({ drawing, at: point(x - min.x, top - tall / 2 - (min.y + max.y) / 2) });
      x += boxWidth(drawing.bounds) + BESIDE;
    }
    top -= tall + BELOW;
  }
  return placed;
};

const rowsOf = (drawings: readonly PieceDrawing[]): PieceDrawing[][] => {
  const isLining = (d: PieceDrawing): boolean => d.cuts?.[0]?.cloth === 'lining';
  return [drawings.filter((d) => !isLining(d)), drawings.filter(isLining)].flatMap((group) => [
    ...evenRows(group.filter((d) => !d.strip)),
    ...group.filter((d) => d.strip).map((d) => [d]),
  ]);
};

/** In order, in rows of about equally many. */
const evenRows = (drawings: readonly PieceDrawing[]): PieceDrawing[][] => {
  const rows = Math.ceil(drawings.length / MOST);
  const each = Math.ceil(drawings.length / rows);
  return Array.from({ length: rows }, (_, i) => drawings.slice(i * each, (i + 1) * each));
};
