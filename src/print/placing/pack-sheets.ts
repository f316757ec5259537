import { type SheetGrid, windowsAcross } from '../sheet-grid.ts';
import type { Size } from '../sheet-size.ts';
import type { Turn } from '../turned.ts';
import { type Board, findPlace, freeBoard, type Range, take } from './board.ts';
import { type Footprint, turnedFootprint } from './footprint.ts';
import { type Mask, maskOf, reachOf } from './mask.ts';

/** Where a piece's turned box has its upper left corner, mm right of and below the first sheet's. */
export interface Spot {
  readonly turn: Turn;
  readonly left: number;
  readonly top: number;
}

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

/** One way of going about it. */
export interface Attempt {
  /** Sheets side by side that may be used. */
  readonly columns: number;
  /** The pieces' numbers, in the order in which they are placed. */
  readonly order: readonly number[];
  readonly fromBelow: boolean;
}

export interface Packed {
  readonly spots: readonly Spot[];
  /** Sheets used, not counting what exact outlines may still save. */
  readonly sheets: number;
  /** Joins that a piece crosses although it need not. */
  readonly splits: number;
}

/** A rectangle of sheets. */
interface Block {
  readonly column: number;
  readonly row: number;
  readonly columns: number;
  readonly rows: number;
}

/** Places the pieces one after the other, each where it opens fewest new sheets; null where there is no room at all. */
export const packSheets = (task: Task, attempt: Attempt, rows: number): Packed | null => {
  const { stride, cell, poses } = task;
  const reach = reachOf(cell);
  const spare = Math.ceil((task.grid.window.width - task.grid.pitch.width) / cell.width) + 1;
  const board = freeBoard(attempt.columns * stride.columns + spare, rows * stride.rows + spare, reach);
  const open = new Uint8Array(attempt.columns * rows);
  const spots: Spot[] = new Array(poses.length);
  let splits = 0;
  for (const index of attempt.order) {
    const found = bestPlace(task, board, open, attempt, poses[index]!);
    if (found === null) return null;
    const { pose, block, at } = found;
    take(board, pose.mask, at[0], at[1]);
    for (const sheet of touched(task, pose, block, at, attempt.columns)) open[sheet] = 1;
    splits += block.columns * block.rows - pose.columns * pose.rows;
    spots[index] = {
      turn: pose.turn,
      left: at[0] * cell.width + pose.inset.width,
      top: at[1] * cell.height + pose.inset.height,
    };
  }
  return { spots, sheets: open.reduce((sum, n) => sum + n, 0), splits };
};

interface Candidate {
  readonly pose: Pose;
  readonly block: Block;
  readonly opens: number;
  readonly splits: number;
}
interface Found extends Candidate {
  readonly at: readonly [number, number];
}

const bestPlace = (
  task: Task,
  board: Board,
  open: Uint8Array,
  attempt: Attempt,
  poses: readonly Pose[],
): Found | null => {
  const candidates = poses.flatMap((pose) => blocksFor(pose, open, attempt.columns));
  // Array.sort keeps the order of equals: upright first, then from the top left.
  candidates.sort((a, b) => a.opens - b.opens || a.splits - b.splits);
  for (const candidate of candidates) {
    const range = rangeIn(task, candidate.pose, candidate.block);
    const at = findPlace(board, candidate.pose.mask, range, attempt.fromBelow);
    if (at !== null) return { ...candidate, at };
  }
  return null;
};

/** Blocks of sheets that a pose may lie on: the smallest it fits, and those one sheet longer or deeper. */
const blocksFor = (pose: Pose, open: Uint8Array, width: number): readonly Candidate[] => {
  const height = open.length / width;
  const candidates: Candidate[] = [];
  for (const [wider, deeper] of SPREADS) {
    const [columns, rows] = [pose.columns + wider, pose.rows + deeper];
    const splits = columns * rows - pose.columns * pose.rows;
    for (let row = 0; row + rows <= height; row++) {
      for (let column = 0; column + columns <= width; column++) {
        const block = { column, row, columns, rows };
        const opens = newSheets(block, open, width);
        // A spread that opens as many as a tight block would is never worth it.
        if (splits === 0 || opens < pose.columns * pose.rows) candidates.push({ pose, block, opens, splits });
      }
    }
  }
  return candidates;
};
const SPREADS = [
  [0, 0],
  [1, 0],
  [0, 1],
] as const;

const newSheets = (block: Block, open: Uint8Array, width: number): number => {
  let count = 0;
  for (let row = block.row; row < block.row + block.rows; row++)
    for (let column = block.column; column < block.column + block.columns; column++)
      if (open[row * width + column] === 0) count++;
  return count;
};

/** The cells in which a pose's corner may lie so that it stays on a block. */
const rangeIn = ({ grid, cell, stride }: Task, pose: Pose, block: Block): Range => {
  const wide = (block.columns - 1) * grid.pitch.width + grid.window.width;
  const deep = (block.rows - 1) * grid.pitch.height + grid.window.height;
  const left = block.column * stride.columns;
  const top = block.row * stride.rows;
  return {
    left,
    top,
    right: left + steps(wide - pose.size.width - 2 * pose.inset.width, cell.width),
    bottom: top + steps(deep - pose.size.height - 2 * pose.inset.height, cell.height),
  };
};

const steps = (spare: number, size: number): number => Math.max(0, Math.floor(spare / size + 1e-9));

/** The sheets of a block on which a pose has cells; a strip that two sheets share counts for the earlier one. */
const touched = (
  { stride, cell, grid }: Task,
  pose: Pose,
  block: Block,
  [left, top]: readonly [number, number],
  width: number,
): ReadonlySet<number> => {
  const sheets = new Set<number>();
  const shared = {
    columns: (grid.window.width - grid.pitch.width) / cell.width,
    rows: (grid.window.height - grid.pitch.height) / cell.height,
  };
  const [lastColumn, lastRow] = [block.column + block.columns - 1, block.row + block.rows - 1];
  const at = (cells: number, strip: number, size: number, first: number, last: number): number =>
    Math.min(last, Math.max(first, Math.floor((cells - strip) / size)));
  const { covered } = pose.mask;
  for (let i = 0; i < covered.length; i += 3) {
    const row = at(top + covered[i]! + 1, shared.rows, stride.rows, block.row, lastRow);
    const from = left + covered[i + 1]!;
    const first = at(from + 1, shared.columns, stride.columns, block.column, lastColumn);
    const last = at(from + covered[i + 2]!, shared.columns, stride.columns, block.column, lastColumn);
    for (let column = first; column <= last; column++) sheets.add(row * width + column);
  }
  return sheets;
};
