import type { Mark } from '../drawing/drawing.ts';
import { type Box, boxHeight, boxWidth } from '../geometry/box.ts';
import { flatten } from '../geometry/flatten.ts';
import { type Point, point } from '../geometry/point.ts';
import type { Size } from './sheet-size.ts';
import { textCorners } from './text-box.ts';

/** Cells of the raster in which a free spot is looked for, mm. */
const CELL = 2;
/** Chords that stand for curves here are within this of them, mm. */
const ROUGH = 0.3;

/**
 * Finds places for blocks on a sheet that is drawn already: inside a box, on as few marks as may be, near its foot
 * and its left. Each block found is taken, so that the next one keeps off it.
 */
export const spotFinder = (box: Box, marks: readonly Mark[]): ((block: Size) => Point) => {
  const columns = Math.max(1, Math.floor(boxWidth(box) / CELL));
  const rows = Math.max(1, Math.floor(boxHeight(box) / CELL));
  const taken = new Uint8Array(columns * rows);
  for (const mark of marks) for (const p of pointsAlong(mark)) takeCell(taken, columns, rows, box, p);
  return (block) => {
    const [wide, tall] = [Math.ceil(block.width / CELL), Math.ceil(block.height / CELL)];
    const sums = summed(taken, columns, rows);
    let best = { x: 0, y: 0, cost: Infinity };
    for (let y = 0; y + tall <= rows; y++) {
      for (let x = 0; x + wide <= columns; x++) {
        const lines = countIn(sums, columns, x, y, wide, tall);
        const cost = lines * 1e4 + y + x * 0.6;
        if (cost < best.cost) best = { x, y, cost };
      }
    }
    for (let y = best.y; y < Math.min(rows, best.y + tall); y++)
      taken.fill(1, y * columns + best.x, y * columns + Math.min(columns, best.x + wide));
    return point(box.min.x + best.x * CELL, box.min.y + best.y * CELL);
  };
};

const takeCell = (taken: Uint8Array, columns: number, rows: number, { min }: Box, p: Point): void => {
  const [x, y] = [Math.floor((p.x - min.x) / CELL), Math.floor((p.y - min.y) / CELL)];
  if (x >= 0 && x < columns && y >= 0 && y < rows) taken[y * columns + x] = 1;
};

/** Points on a line, or all over a text, closer together than cells. */
function* pointsAlong(mark: Mark): Generator<Point> {
  if (mark.kind === 'line') {
    yield* steps(flatten(mark.path, ROUGH));
    return;
  }
  const [a, b, c, d] = textCorners(mark) as [Point, Point, Point, Point];
  for (const p of steps([a, d])) yield* steps([p, point(p.x + b.x - a.x, p.y + b.y - a.y)]);
  yield c;
}

function* steps(points: readonly Point[]): Generator<Point> {
  for (let i = 1; i < points.length; i++) {
    const [p, q] = [points[i - 1]!, points[i]!];
    const count = Math.max(1, Math.ceil(Math.hypot(q.x - p.x, q.y - p.y) / (CELL * 0.7)));
    for (let k = 0; k <= count; k++)
      yield point(p.x + ((q.x - p.x) * k) / count, p.y + ((q.y - p.y) * k) / count);
  }
}

/** Sums over every rectangle from the first cell, one row and one column of noughts before it. */
const summed = (cells: Uint8Array, columns: number, rows: number): Int32Array => {
  const sums = new Int32Array((columns + 1) * (rows + 1));
  for (let y = 0; y < rows; y++) {
    let row = 0;
    for (let x = 0; x < columns; x++) {
      row += cells[y * columns + x]!;
      sums[(y + 1) * (columns + 1) + x + 1] = sums[y * (columns + 1) + x + 1]! + row;
    }
  }
  return sums;
};

const countIn = (
  sums: Int32Array,
  columns: number,
  x: number,
  y: number,
  wide: number,
  tall: number,
): number => {
  const at = (u: number, v: number): number => sums[v * (columns + 1) + u]!;
  return at(x + wide, y + tall) - at(x, y + tall) - at(x + wide, y) + at(x, y);
};
