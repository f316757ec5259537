import type { PieceDrawing } from '../../drawing/drawing.ts';
import type { Cell, SheetGrid } from '../sheet-grid.ts';
import { type Footprint, sizeOf } from './footprint.ts';
import { cellBounds } from './needed.ts';
import type { Orders } from './orders.ts';
import { type Attempt, type Packed, packSheets } from './pack-sheets.ts';
import { inRows } from './rows.ts';
import { cellsOf, type Placement, settled } from './settle.ts';
import type { Spot } from './spot.ts';
import { EDGE, type Task, taskOf } from './task.ts';

interface Layout {
  readonly spots: readonly Spot[];
  readonly cells: readonly Cell[];
  readonly splits: number;
}

/** The best of several attempts, the plain rows among them. */
export const onSheets = (
  drawings: readonly PieceDrawing[],
  pieces: readonly Footprint[],
  orders: Orders,
  grid: SheetGrid,
): Placement => {
  const rows = inRows(pieces.map(sizeOf), grid);
  const plain = rows.at.map((at): Spot => ({ turn: 0, ...at }));
  let best: Layout = { spots: plain, cells: cellsOf(pieces, plain, grid), splits: Infinity };
  const task = taskOf(pieces, grid, EDGE.least);
  const widths = widthsOf(task);
  let winner: Attempt | null = null;
  for (const [i, order] of orders.entries()) {
    const attempt = { columns: widths[i % widths.length]!, order, fromBelow: i % 5 === 3 };
    const layout = attempted(pieces, task, attempt, best);
    if (layout !== null && isBetter(layout, best)) [best, winner] = [layout, attempt];
  }
  // Would as few sheets do with the pieces further from their edges?
  const roomy = winner && attempted(pieces, taskOf(pieces, grid, EDGE.rather), winner, best);
  if (roomy !== null && !isBetter(best, roomy)) best = roomy;
  return settled(drawings, pieces, best, grid, rows.sheets);
};

/** What comes of an attempt, or null where that is not worth a look beside the best so far. */
const attempted = (
  pieces: readonly Footprint[],
  task: Task,
  attempt: Attempt,
  best: Layout,
): Layout | null => {
  const packed = packSheets(task, attempt, rowsFor(task, attempt.columns));
  if (packed === null || !promises(packed, best)) return null;
  return { ...packed, cells: cellsOf(pieces, packed.spots, task.grid) };
};

/** Widths in sheets to try: what the widest piece needs, and a few more. */
const widthsOf = ({ poses }: Task): readonly number[] => {
  const least = Math.max(...poses.map((list) => Math.min(...list.map((p) => p.columns))));
  const sheets = poses.reduce((sum, list) => sum + Math.min(...list.map((p) => p.columns * p.rows)), 0);
  const most = Math.max(least, Math.min(least + 3, sheets));
  return Array.from({ length: most - least + 1 }, (_, i) => least + i);
};

/** Rows of sheets that hold everything even if no two pieces share a sheet. */
const rowsFor = ({ poses }: Task, columns: number): number => {
  const fitting = poses.map((list) => list.filter((p) => p.columns <= columns));
  const tallest = Math.max(...fitting.flatMap((list) => list.map((p) => p.rows)));
  const sheets = fitting.reduce((sum, list) => sum + Math.min(...list.map((p) => p.columns * p.rows)), 0);
  return tallest + Math.ceil(sheets / columns);
};

/** Whether exact outlines are worth a look: as counted in cells it takes fewer sheets, or as many with fewer splits. */
const promises = (packed: Packed, best: Layout): boolean =>
  packed.sheets < best.cells.length || (packed.sheets === best.cells.length && packed.splits <= best.splits);

const isBetter = (a: Layout, b: Layout): boolean => {
  if (a.cells.length !== b.cells.length) return a.cells.length < b.cells.length;
  if (a.splits !== b.splits) return a.splits < b.splits;
  return spread(a.cells) < spread(b.cells);
};

/** Rows and columns together; of two alike, fewer blank sheets among them. A squarer map is easier to follow. */
const spread = (cells: readonly Cell[]): number => {
  const { first, last } = cellBounds(cells);
  const [rows, columns] = [last.row - first.row + 1, last.column - first.column + 1];
  return rows + columns + (rows * columns) / 10000;
};
