import type { PieceDrawing } from '../drawing/drawing.ts';
import { footprintOf } from './placing/footprint.ts';
import { onePage, onRoll } from './placing/on-endless.ts';
import { onSheets } from './placing/on-sheets.ts';
import { type Orders, ordersOf } from './placing/orders.ts';
import type { Placement } from './placing/settle.ts';
import type { SheetGrid } from './sheet-grid.ts';

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
