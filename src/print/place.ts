import type { PieceDrawing } from '../drawing/drawing.ts';
import { boxHeight, boxUnion, boxWidth } from '../geometry/box.ts';
import { add, point, subtract } from '../geometry/point.ts';
import { type Footprint, footprintOf, mapped } from './placing/footprint.ts';
import { cellBounds, neededSheets } from './placing/needed.ts';
import { ordersOf } from './placing/orders.ts';
import { packRoll, rollPoses } from './placing/pack-roll.ts';
import {
  type Attempt,
  EDGE,
  type Packed,
  packSheets,
  type Spot,
  type Task,
  taskOf,
} from './placing/pack-sheets.ts';
import { inRows } from './placing/rows.ts';
import { type Cell, type SheetGrid, windowsAcross } from './sheet-grid.ts';
import { turnedBox, turnedDrawing, turnedPoint } from './turned.ts';

/** Where every piece lies on the plane of sheets, and which sheets are needed to show them all. */
export interface Placement {
  /** Turned and moved, in the order given; the first sheet's top left corner is the origin. */
  readonly pieces: readonly PieceDrawing[];
  /** In reading order; rows and columns from 0. */
  readonly cells: readonly Cell[];
  /** The windows. Where the paper is endless, cut to the length that is used. */
  readonly grid: SheetGrid;
  /** A block that came along on endless paper, where it lies. */
  readonly block?: PieceDrawing;
  /** Sheets the pieces would take unturned in rows, counting the whole rectangle around them. */
  readonly naiveSheets: number;
}

/** Attempts are fewer the more pieces there are, so that the answer stays quick. */
const ATTEMPTS = { work: 130, least: 5, most: 16 } as const;

/**
 * Places pieces at least 4 mm apart, turned by quarters, so that they take few sheets: never more than in rows. A
 * piece that fits one sheet is split over two only where that saves a sheet. Same pieces, same answer. On endless
 * paper a block may come along that stays upright at the top left.
 */
export const placePieces = (
  drawings: readonly PieceDrawing[],
  grid: SheetGrid,
  block?: PieceDrawing,
): Placement => {
  const isEndless = !Number.isFinite(grid.window.height);
  const all = isEndless && block ? [block, ...drawings] : drawings;
  // Nothing to print?
  if (all.length === 0) return { pieces: [], cells: [], grid, naiveSheets: 0 };
  const pieces = all.map(footprintOf);
  const count = Math.round(ATTEMPTS.work / pieces.length);
  const orders = ordersOf(pieces, Math.min(ATTEMPTS.most, Math.max(ATTEMPTS.least, count)));
  if (!isEndless) return onSheets(drawings, pieces, orders, grid);
  const fixed = all.length - drawings.length;
  const place = Number.isFinite(grid.window.width) ? onRoll : onePage;
  const placed = place(all, pieces, blockFirst(orders, fixed), grid, fixed);
  const [first, ...others] = placed.pieces;
  return fixed === 1 ? { ...placed, block: first!, pieces: others } : placed;
};

const blockFirst = (orders: Orders, fixed: number): Orders =>
  orders.map((order) => [...order.filter((i) => i < fixed), ...order.filter((i) => i >= fixed)]);

type Orders = readonly (readonly number[])[];

interface Layout {
  readonly spots: readonly Spot[];
  readonly cells: readonly Cell[];
  readonly splits: number;
}

const onSheets = (
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

const sizeOf = ({ box }: Footprint) => ({ width: boxWidth(box), height: boxHeight(box) });

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

const placedFootprint = (piece: Footprint, { turn, left, top }: Spot): Footprint => {
  const box = turnedBox(piece.box, turn);
  const shift = point(left - box.min.x, -top - box.max.y);
  return mapped(piece, (p) => add(turnedPoint(p, turn), shift));
};

const cellsOf = (pieces: readonly Footprint[], spots: readonly Spot[], grid: SheetGrid): readonly Cell[] =>
  neededSheets(
    pieces.map((piece, i) => placedFootprint(piece, spots[i]!)),
    grid,
  );

/** The layout as drawings, moved so that the first row and column used are the first there are. */
const settled = (
  drawings: readonly PieceDrawing[],
  pieces: readonly Footprint[],
  { spots, cells }: Pick<Layout, 'spots' | 'cells'>,
  grid: SheetGrid,
  naiveSheets: number,
): Placement => {
  const { first } = cellBounds(cells);
  const corner = point(
    first.column === 0 ? 0 : first.column * grid.pitch.width,
    first.row === 0 ? 0 : -first.row * grid.pitch.height,
  );
  return {
    pieces: drawings.map((drawing, i) => {
      const { turn, left, top } = spots[i]!;
      const box = turnedBox(pieces[i]!.box, turn);
      return turnedDrawing(drawing, turn, subtract(point(left - box.min.x, -top - box.max.y), corner));
    }),
    cells: cells.map((c) => ({ row: c.row - first.row, column: c.column - first.column })),
    grid,
    naiveSheets,
  };
};

/** A roll: as short as may be. A piece too wide for it runs over rolls side by side. */
const onRoll = (
  drawings: readonly PieceDrawing[],
  pieces: readonly Footprint[],
  orders: Orders,
  grid: SheetGrid,
  fixed: number,
): Placement => {
  const { window, pitch } = grid;
  const columns = Math.max(
    ...pieces.map(sizeOf).map((s) => windowsAcross(Math.min(s.width, s.height), window.width, pitch.width)),
  );
  const packed = shortest(pieces, [(columns - 1) * pitch.width + window.width], orders, fixed);
  const endless = { width: window.width, height: packed.length };
  const cut = { window: endless, pitch: { width: pitch.width, height: packed.length } };
  const cells = cellsOf(pieces, packed.spots, cut);
  const naive = inRows(pieces.map(sizeOf), grid).sheets;
  return settled(drawings, pieces, { spots: packed.spots, cells }, cut, naive);
};

/** One page: of several widths the one that makes the smallest page. */
const onePage = (
  drawings: readonly PieceDrawing[],
  pieces: readonly Footprint[],
  orders: Orders,
  grid: SheetGrid,
  fixed: number,
): Placement => {
  const sizes = pieces.map(sizeOf);
  const area = sizes.reduce((sum, s) => sum + s.width * s.height, 0);
  const least = Math.max(...sizes.map((s, i) => (i < fixed ? s.width : Math.min(s.width, s.height))));
  const longest = Math.max(...sizes.map((s) => Math.max(s.width, s.height)));
  const widths = [longest, ...[0.8, 1, 1.2].map((k) => Math.max(least, k * Math.sqrt(area)))];
  const packed = shortest(pieces, widths, orders.slice(0, 8), fixed);
  const placed = pieces.map((piece, i) => placedFootprint(piece, packed.spots[i]!));
  const size = { width: boxWidth(boxUnion(placed.map((p) => p.box))), height: packed.length };
  const cells = [{ row: 0, column: 0 }];
  return settled(drawings, pieces, { spots: packed.spots, cells }, { ...grid, window: size, pitch: size }, 1);
};

const shortest = (pieces: readonly Footprint[], widths: readonly number[], orders: Orders, fixed: number) => {
  const poses = pieces.map((piece, i) => rollPoses(piece, i < fixed ? [0] : [0, 1, 2, 3]));
  let best: { readonly spots: readonly Spot[]; readonly length: number; readonly area: number } | null = null;
  for (const width of widths) {
    for (const order of orders) {
      const packed = packRoll(poses, width, order);
      if (packed === null) continue;
      const area = packed.length * width;
      if (best === null || area < best.area) best = { ...packed, area };
    }
  }
  if (best === null) throw new RangeError('no width of paper given is as wide as the pieces are');
  return best;
};
