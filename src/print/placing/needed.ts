import { type Box, boxesMeet, boxOf, boxUnion } from '../../geometry/box.ts';
import { isWithin } from '../../geometry/inside.ts';
import { type Point, point } from '../../geometry/point.ts';
import { SAME_POINT } from '../../geometry/tolerance.ts';
import { type Cell, type SheetGrid, windowOf } from '../sheet-grid.ts';
import type { Footprint } from './footprint.ts';

/**
 * The sheets that must be printed so that every part of every piece is on one of them, in reading order. A sheet
 * that shows nothing, or only what its neighbours show as well in the shared strips, is left out, unless the sheets
 * of a piece would then meet at a corner alone: sheets are joined side to side.
 */
export const neededSheets = (pieces: readonly Footprint[], grid: SheetGrid): readonly Cell[] => {
  const shown = cellsOver(boxUnion(pieces.map((p) => p.box)), grid)
    .map((cell) => ({ cell, zones: usedZones(pieces, grid, cell) }))
    .filter(({ zones }) => zones.length > 0);
  const kept = new Map(shown.map(({ cell }) => [nameless(cell), cell]));
  // Those with the least of their own are given up first.
  const order = [...shown].sort((a, b) => a.zones.length - b.zones.length || later(a.cell, b.cell));
  for (const { cell, zones } of order) {
    const isShared = zones.every((zone) => sharers(cell, zone).some((other) => kept.has(nameless(other))));
    if (isShared && !pieces.some((piece) => isJoinedBy(piece, cell, [...kept.values()], grid)))
      kept.delete(nameless(cell));
  }
  return [...kept.values()].sort((a, b) => later(b, a));
};

/** Whether the sheets that show a piece would fall apart without one of them. */
const isJoinedBy = (piece: Footprint, cell: Cell, kept: readonly Cell[], grid: SheetGrid): boolean => {
  const shows = (one: Cell): boolean => {
    const window = windowOf(grid, one);
    return boxesMeet(piece.box, window) && meets(piece, drawnIn(window));
  };
  const showing = shows(cell) ? kept.filter(shows) : [];
  return groupsOf(showing.filter((one) => one !== cell)) > groupsOf(showing);
};

/** How many groups sheets fall into that are joined side to side. */
const groupsOf = (cells: readonly Cell[]): number => {
  const rest = new Set(cells);
  let groups = 0;
  for (const first of rest) {
    groups++;
    const group = new Set([first]);
    for (const { row, column } of group) {
      for (const other of rest) {
        if (Math.abs(other.row - row) + Math.abs(other.column - column) <= 1) {
          rest.delete(other);
          group.add(other);
        }
      }
    }
  }
  return groups;
};

const later = (a: Cell, b: Cell): number => b.row - a.row || b.column - a.column;
const nameless = ({ row, column }: Cell): string => `${row},${column}`;

/** The cells of the grid whose windows touch a box. */
const cellsOver = (box: Box, grid: SheetGrid): readonly Cell[] => {
  const columns = span(box.min.x, box.max.x, grid.window.width, grid.pitch.width);
  const rows = span(-box.max.y, -box.min.y, grid.window.height, grid.pitch.height);
  return rows.flatMap((row) => columns.map((column) => ({ row, column })));
};

/** The windows, by number, that a stretch from a distance to another touches. */
const span = (from: number, to: number, window: number, pitch: number): readonly number[] => {
  // One endless window?
  if (!Number.isFinite(pitch)) return [0];
  const first = Math.floor((from - window) / pitch);
  const last = Math.ceil(to / pitch);
  return Array.from({ length: last - first + 1 }, (_, i) => first + i);
};

/** A part of a window: -1 the strip shared with the neighbour before, 1 with the one after, 0 between them. */
interface Zone {
  readonly across: -1 | 0 | 1;
  readonly down: -1 | 0 | 1;
}
const PARTS = [-1, 0, 1] as const;

/** The other cells that show a zone as well. */
const sharers = ({ row, column }: Cell, { across, down }: Zone): readonly Cell[] => {
  const rows = down === 0 ? [row] : [row, row + down];
  const columns = across === 0 ? [column] : [column, column + across];
  return rows
    .flatMap((r) => columns.map((c) => ({ row: r, column: c })))
    .filter((c) => c.row !== row || c.column !== column);
};

/** The zones of a window in which there is something of a piece. */
const usedZones = (pieces: readonly Footprint[], grid: SheetGrid, cell: Cell): readonly Zone[] => {
  const window = windowOf(grid, cell);
  const near = pieces.filter((p) => boxesMeet(p.box, window));
  const zones = PARTS.flatMap((down) => PARTS.map((across) => ({ across, down })));
  return zones.filter((zone) => {
    const box = zoneBox(window, grid, zone);
    return near.some((piece) => boxesMeet(piece.box, box) && meets(piece, box));
  });
};

/** A box drawn in by a hair, so that what only touches its edge is not in it. */
const drawnIn = ({ min, max }: Box): Box => ({
  min: point(min.x + SAME_POINT, min.y + SAME_POINT),
  max: point(max.x - SAME_POINT, max.y - SAME_POINT),
});

const zoneBox = (window: Box, { window: size, pitch }: SheetGrid, { across, down }: Zone): Box => {
  const x = part(
    window.min.x,
    window.max.x,
    Number.isFinite(size.width) ? size.width - pitch.width : 0,
    across,
  );
  const y = part(
    window.min.y,
    window.max.y,
    Number.isFinite(size.height) ? size.height - pitch.height : 0,
    -down as -1 | 0 | 1,
  );
  return drawnIn({ min: point(x[0], y[0]), max: point(x[1], y[1]) });
};

/** One of the three parts of a stretch. */
const part = (from: number, to: number, shared: number, which: -1 | 0 | 1): readonly [number, number] => {
  const low = which === -1 ? from : which === 0 ? from + shared : to - shared;
  const high = which === -1 ? from + shared : which === 0 ? to - shared : to;
  return [low, high];
};

/** Whether any of a piece lies in a box: its outline or marks run through it, or the box is inside the outline. */
export const meets = (piece: Footprint, box: Box): boolean => {
  if (!(box.min.x < box.max.x && box.min.y < box.max.y)) return false;
  return (
    runsThrough(piece.outline, box) ||
    piece.chains.some((chain) => runsThrough(chain, box)) ||
    isWithin(piece.outline, point((box.min.x + box.max.x) / 2, (box.min.y + box.max.y) / 2))
  );
};

const runsThrough = (chain: readonly Point[], box: Box): boolean => {
  for (let i = 1; i < chain.length; i++) if (segmentMeets(chain[i - 1]!, chain[i]!, box)) return true;
  return false;
};

/** Whether a segment has a point in a box: the stretches of it between the box's sides have one in common. */
const segmentMeets = (p: Point, q: Point, { min, max }: Box): boolean => {
  if (Math.max(p.x, q.x) < min.x || Math.min(p.x, q.x) > max.x) return false;
  if (Math.max(p.y, q.y) < min.y || Math.min(p.y, q.y) > max.y) return false;
  const [dx, dy] = [q.x - p.x, q.y - p.y];
  let [from, to] = [0, 1];
  for (const [d, low, high] of [
    [dx, min.x - p.x, max.x - p.x],
    [dy, min.y - p.y, max.y - p.y],
  ] as const) {
    if (d === 0) continue;
    from = Math.max(from, Math.min(low / d, high / d));
    to = Math.min(to, Math.max(low / d, high / d));
  }
  return from <= to;
};

/** The box around cells: rows and columns counted from the first that is used. */
export const cellBounds = (cells: readonly Cell[]): { readonly first: Cell; readonly last: Cell } => {
  const { min, max } = boxOf(cells.map((c) => point(c.column, c.row)));
  return { first: { row: min.y, column: min.x }, last: { row: max.y, column: max.x } };
};
