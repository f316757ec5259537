import { type SheetGrid, windowsAcross } from '../sheet-grid.ts';
import type { Size } from '../sheet-size.ts';
import type { Turn } from '../turned.ts';
import { type Footprint, turnedFootprint } from './footprint.ts';
import { type Mask, maskOf } from './mask.ts';

/** A piece turned one way: its cells, and how many sheets it takes at least. */
export interface Pose {
  readonly turn: Turn;
  readonly size: Size;
  readonly mask: Mask;
  /** From a cell's corner to the piece's box, so that no cut line lies on the edge of a sheet where it can be helped. */
  readonly inset: Size;
  readonly columns: number;
  readonly rows: number;
}

/** Cells are about this large, mm. */
const CELL = 2.7;
/** Pieces stay this far from the edges of the sheets they lie on, mm: at least, and rather. */
export const EDGE = { least: 1, rather: 3 } as const;
const TURNS: readonly Turn[] = [0, 1, 2, 3];

/** What all attempts to place the same pieces have in common. */
export interface Task {
  readonly grid: SheetGrid;
  readonly cell: Size;
  /** Cells from one sheet to the next. */
  readonly stride: { readonly columns: number; readonly rows: number };
  /** For each piece the ways it can be turned. */
  readonly poses: readonly (readonly Pose[])[];
}

export const taskOf = (pieces: readonly Footprint[], grid: SheetGrid, edge: number): Task => {
  const stride = {
    columns: Math.max(1, Math.round(grid.pitch.width / CELL)),
    rows: Math.max(1, Math.round(grid.pitch.height / CELL)),
  };
  const cell = { width: grid.pitch.width / stride.columns, height: grid.pitch.height / stride.rows };
  const poses = pieces.map((piece) =>
    TURNS.map((turn) => poseOf(turnedFootprint(piece, turn), turn, grid, cell, edge)),
  );
  return { grid, cell, stride, poses };
};

const poseOf = (
  piece: Footprint,
  turn: Turn,
  { window, pitch }: SheetGrid,
  cell: Size,
  edge: number,
): Pose => {
  const size = { width: piece.box.max.x, height: piece.box.max.y };
  const columns = windowsAcross(size.width, window.width, pitch.width);
  const rows = windowsAcross(size.height, window.height, pitch.height);
  const inset = {
    width: insetIn((columns - 1) * pitch.width + window.width - size.width, edge),
    height: insetIn((rows - 1) * pitch.height + window.height - size.height, edge),
  };
  return { turn, size, mask: maskOf(piece, cell, inset), inset, columns, rows };
};

const insetIn = (spare: number, edge: number): number => Math.max(0, Math.min(edge, spare / 2));
