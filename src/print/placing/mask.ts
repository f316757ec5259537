import type { Point } from '../../geometry/point.ts';
import type { Size } from '../sheet-size.ts';
import type { Footprint } from './footprint.ts';
import { APART } from './rows.ts';

/** Stretches of cells in rows: row, first column, count; three numbers for each. Rows count downwards. */
export type Runs = Int16Array;

/** A piece in cells: those it covers, and those that others must keep out of. Both from its box's upper left corner. */
export interface Mask {
  readonly covered: Runs;
  readonly wide: Runs;
  /** Cells from the first to the last that it covers. */
  readonly columns: number;
  readonly rows: number;
}

/** Points on outlines are no further apart than this share of a cell. */
const STEP = 0.5;

/** How many cells the wide mask stands out over the piece on each side. */
export const reachOf = (cell: Size): number => Math.ceil((APART + 1) / Math.min(cell.width, cell.height)) + 1;

/**
 * The cells of a piece (its box's lower left corner on the origin) that lies `inset` from the left and the top of a
 * cell's corner. The wide mask holds every cell with a point within APART of the piece.
 */
export const maskOf = (piece: Footprint, cell: Size, inset: Size): Mask => {
  const reach = reachOf(cell);
  const top = piece.box.max.y;
  const columns = Math.ceil((piece.box.max.x + inset.width) / cell.width);
  const rows = Math.ceil((top + inset.height) / cell.height);
  const sheet = {
    columns: columns + 2 * reach,
    rows: rows + 2 * reach,
    cell,
    reach,
    left: inset.width,
    top: top + inset.height,
  };
  const covered = new Uint8Array(sheet.columns * sheet.rows);
  fill(covered, piece.outline, sheet);
  const wide = covered.slice();
  for (const chain of [piece.outline, ...piece.chains]) stamp(covered, wide, chain, sheet);
  return { covered: runsOf(covered, sheet), wide: longestFirst(runsOf(wide, sheet)), columns, rows };
};

/** A raster with `reach` spare cells on each side, and where the piece's own coordinates lie on it. */
interface Raster {
  readonly columns: number;
  readonly rows: number;
  readonly cell: Size;
  readonly reach: number;
  readonly left: number;
  readonly top: number;
}

/** Marks every cell whose centre line across is inside the outline. */
const fill = (cells: Uint8Array, outline: readonly Point[], raster: Raster): void => {
  const crossings: number[][] = Array.from({ length: raster.rows }, () => []);
  for (let i = 1; i < outline.length; i++) {
    const [p, q] = [outline[i - 1]!, outline[i]!];
    const [u, v] = [rowAt(p.y, raster) - 0.5, rowAt(q.y, raster) - 0.5];
    const [low, high] = u < v ? [u, v] : [v, u];
    // The centre line of row j is crossed where low < j <= high, so that a corner on it counts once.
    for (let row = Math.floor(low) + 1; row <= high; row++) {
      const x = p.x + ((row - u) / (v - u)) * (q.x - p.x);
      crossings[row]?.push(columnAt(x, raster));
    }
  }
  for (const [row, list] of crossings.entries()) {
    list.sort((a, b) => a - b);
    for (let k = 0; k + 1 < list.length; k += 2)
      cells.fill(
        1,
        row * raster.columns + Math.floor(list[k]!),
        row * raster.columns + Math.ceil(list[k + 1]!),
      );
  }
};

const columnAt = (x: number, r: Raster): number => (x + r.left) / r.cell.width + r.reach;
const rowAt = (y: number, r: Raster): number => (r.top - y) / r.cell.height + r.reach;

/** Walks a chain in small steps, marking the cells it runs through and those within APART of it. */
const stamp = (covered: Uint8Array, wide: Uint8Array, chain: readonly Point[], raster: Raster): void => {
  const { cell } = raster;
  const step = STEP * Math.min(cell.width, cell.height);
  let last = -1;
  for (let i = 1; i < chain.length; i++) {
    const [p, q] = [chain[i - 1]!, chain[i]!];
    const count = Math.max(1, Math.ceil(Math.hypot(q.x - p.x, q.y - p.y) / step));
    for (let k = 0; k <= count; k++) {
      const x = columnAt(p.x + ((q.x - p.x) * k) / count, raster);
      const y = rowAt(p.y + ((q.y - p.y) * k) / count, raster);
      const at = Math.floor(y) * raster.columns + Math.floor(x);
      covered[at] = 1;
      // Two steps in one cell widen it alike but for half a cell, which the distance allows for.
      if (at !== last) widen(wide, x, y, APART + step, raster);
      last = at;
    }
  }
};

/** Marks the cells that have a point within a distance (mm) of a place given in cells. */
const widen = (wide: Uint8Array, x: number, y: number, distance: number, { cell, columns }: Raster): void => {
  const [rx, ry] = [distance / cell.width, distance / cell.height];
  for (let row = Math.floor(y - ry); row <= Math.floor(y + ry); row++) {
    const off = Math.max(0, row - y, y - row - 1) / ry;
    const half = rx * Math.sqrt(Math.max(0, 1 - off * off));
    wide.fill(1, row * columns + Math.floor(x - half), row * columns + Math.floor(x + half) + 1);
  }
};

const runsOf = (cells: Uint8Array, { columns, rows, reach }: Raster): Runs => {
  const runs: number[] = [];
  for (let row = 0; row < rows; row++) {
    for (let x = 0; x < columns; x++) {
      const start = x;
      while (x < columns && cells[row * columns + x] === 1) x++;
      if (x > start) runs.push(row - reach, start - reach, x - start);
    }
  }
  return Int16Array.from(runs);
};

/** The longest runs are the likeliest to hit something: they are tried first. */
const longestFirst = (runs: Runs): Runs => {
  const order = Array.from({ length: runs.length / 3 }, (_, i) => 3 * i);
  order.sort((a, b) => runs[b + 2]! - runs[a + 2]! || a - b);
  return Int16Array.from(order.flatMap((i) => [runs[i]!, runs[i + 1]!, runs[i + 2]!]));
};
