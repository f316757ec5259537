import type { Mark } from '../drawing/drawing.ts';
import { type Box, boxHeight, boxWidth } from '../geometry/box.ts';
import { flatten } from '../geometry/flatten.ts';
import type { Path } from '../geometry/path.ts';
import { type Point, point } from '../geometry/point.ts';
import { SAME_POINT } from '../geometry/tolerance.ts';
import type { Size } from './sheet-size.ts';
import { textCorners } from './text-box.ts';

/** Cells of the raster that tells where there is something already, mm, unless finer ones are asked for. */
const CELL = 2;
/** Chords that stand for curves here are within this of them, mm. */
const ROUGH = 0.3;
/** A cell that a line runs through weighs as much as this many that merely lie on a piece. */
const LINE = 400;

/** How much is drawn where, in square cells over a box; written to while things are drawn. */
export interface Clutter {
  readonly box: Box;
  /** The side of a cell, mm. */
  readonly cell: number;
  readonly columns: number;
  readonly rows: number;
  /** 0 free paper, 1 on a piece, LINE on a line or a text. */
  readonly weights: Float64Array;
}

/** The clutter that some marks make, and the outlines whose inside is not free paper either. */
export const clutterOf = (
  box: Box,
  marks: readonly Mark[],
  outlines: readonly Path[] = [],
  cell = CELL,
): Clutter => {
  const columns = Math.max(1, Math.floor(boxWidth(box) / cell));
  const rows = Math.max(1, Math.floor(boxHeight(box) / cell));
  const clutter = { box, cell, columns, rows, weights: new Float64Array(columns * rows) };
  for (const outline of outlines) fill(clutter, flatten(outline, ROUGH));
  for (const mark of marks) for (const p of pointsAlong(mark, cell)) weigh(clutter, p);
  return clutter;
};

const weigh = ({ weights, cell, columns, rows, box: { min } }: Clutter, p: Point): void => {
  const [x, y] = [Math.floor((p.x - min.x) / cell), Math.floor((p.y - min.y) / cell)];
  if (x >= 0 && x < columns && y >= 0 && y < rows) weights[y * columns + x] = LINE;
};

/** Marks the cells whose centre line across is inside an outline. */
const fill = ({ weights, cell, columns, rows, box: { min } }: Clutter, outline: readonly Point[]): void => {
  const crossings: number[][] = Array.from({ length: rows }, () => []);
  for (let i = 1; i < outline.length; i++) {
    const [p, q] = [outline[i - 1]!, outline[i]!];
    const [u, v] = [(p.y - min.y) / cell - 0.5, (q.y - min.y) / cell - 0.5];
    const [low, high] = u < v ? [u, v] : [v, u];
    for (let row = Math.max(0, Math.floor(low) + 1); row <= Math.min(high, rows - 1); row++)
      crossings[row]!.push((p.x + ((row - u) / (v - u)) * (q.x - p.x) - min.x) / cell);
  }
  for (const [row, list] of crossings.entries()) {
    list.sort((a, b) => a - b);
    for (let k = 0; k + 1 < list.length; k += 2) {
      const [from, to] = [Math.max(0, Math.floor(list[k]!)), Math.min(columns, Math.ceil(list[k + 1]!))];
      if (from < to) weights.fill(1, row * columns + from, row * columns + to);
    }
  }
};

/** Points on a line, or all over a text, closer together than cells. */
function* pointsAlong(mark: Mark, cell: number): Generator<Point> {
  if (mark.kind === 'line') {
    yield* steps(flatten(mark.path, ROUGH), cell);
    return;
  }
  const [a, b, , d] = textCorners(mark) as [Point, Point, Point, Point];
  for (const p of steps([a, d], cell)) yield* steps([p, point(p.x + b.x - a.x, p.y + b.y - a.y)], cell);
}

function* steps(points: readonly Point[], cell: number): Generator<Point> {
  for (let i = 1; i < points.length; i++) {
    const [p, q] = [points[i - 1]!, points[i]!];
    const count = Math.max(1, Math.ceil(Math.hypot(q.x - p.x, q.y - p.y) / (cell * 0.7)));
    for (let k = 0; k <= count; k++)
      yield point(p.x + ((q.x - p.x) * k) / count, p.y + ((q.y - p.y) * k) / count);
  }
}

/** Where a block's lower left corner lies for it to cover least of what is there, and of equals nearest a point. */
const bestSpot = (clutter: Clutter, block: Size, near: Point): Point | null => {
  const { cell, columns, rows, box } = clutter;
  const [wide, tall] = [Math.ceil(block.width / cell), Math.ceil(block.height / cell)];
  const sums = summed(clutter);
  const [u, v] = [(near.x - box.min.x) / cell, (near.y - box.min.y) / cell];
  let best: { x: number; y: number; cost: number } | null = null;
  for (let y = 0; y + tall <= rows; y++) {
    for (let x = 0; x + wide <= columns; x++) {
      const cost = sumIn(sums, columns, x, y, wide, tall) + Math.hypot(x - u, y - v) / 2;
      if (best === null || cost < best.cost) best = { x, y, cost };
    }
  }
  return best && point(box.min.x + best.x * cell, box.min.y + best.y * cell);
};

/** The best place for a block, which is then taken. Where it is too large for the box, the box's own corner. */
export const takeSpot = (clutter: Clutter, block: Size, near: Point): Point => {
  const { cell, columns, rows, weights, box } = clutter;
  const at = bestSpot(clutter, block, near) ?? box.min;
  const [x, y] = [cellOf((at.x - box.min.x) / cell, columns), cellOf((at.y - box.min.y) / cell, rows)];
  const [wide, tall] = [Math.ceil(block.width / cell), Math.ceil(block.height / cell)];
  for (let row = y; row < Math.min(rows, y + tall); row++)
    weights.fill(LINE, row * columns + x, row * columns + Math.min(columns, x + wide));
  return at;
};

/** Sums over every rectangle from the first cell, one row and one column of noughts before it. */
const summed = ({ weights, columns, rows }: Clutter): Float64Array => {
  const sums = new Float64Array((columns + 1) * (rows + 1));
  for (let y = 0; y < rows; y++) {
    let row = 0;
    for (let x = 0; x < columns; x++) {
      row += weights[y * columns + x]!;
      sums[(y + 1) * (columns + 1) + x + 1] = sums[y * (columns + 1) + x + 1]! + row;
    }
  }
  return sums;
};

const sumIn = (
  sums: Float64Array,
  columns: number,
  x: number,
  y: number,
  wide: number,
  tall: number,
): number => {
  const at = (u: number, v: number): number => sums[v * (columns + 1) + u]!;
  return at(x + wide, y + tall) - at(x, y + tall) - at(x + wide, y) + at(x, y);
};

/** How much there is in a box. */
export const weightIn = ({ weights, cell, columns, rows, box: { min } }: Clutter, b: Box): number => {
  const [x0, x1] = [b.min.x, b.max.x].map((x) => cellOf((x - min.x) / cell, columns)) as [number, number];
  const [y0, y1] = [b.min.y, b.max.y].map((y) => cellOf((y - min.y) / cell, rows)) as [number, number];
  let sum = 0;
  for (let y = y0; y <= y1; y++) for (let x = x0; x <= x1; x++) sum += weights[y * columns + x]!;
  return sum;
};

/** A hair is added so that one place, come by in two ways, is in one cell. */
const cellOf = (at: number, count: number): number =>
  Math.min(count - 1, Math.max(0, Math.floor(at + SAME_POINT)));
