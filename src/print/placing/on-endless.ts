import type { PieceDrawing } from '../../drawing/drawing.ts';
import { boxUnion, boxWidth } from '../../geometry/box.ts';
import { type SheetGrid, windowsAcross } from '../sheet-grid.ts';
import { type Footprint, sizeOf } from './footprint.ts';
import type { Orders } from './orders.ts';
import { packRoll, rollPoses } from './pack-roll.ts';
import { inRows } from './rows.ts';
import { cellsOf, type Placement, placedFootprint, settled } from './settle.ts';
import type { Spot } from './spot.ts';

/** A roll: as short as may be. A piece too wide for it runs over rolls side by side. The first `fixed` pieces are not turned. */
export const onRoll = (
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
export const onePage = (
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
