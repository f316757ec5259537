import { blocksFor, type Candidate, rangeIn, touched } from './blocks.ts';
import { type Board, findPlace, freeBoard, take } from './board.ts';
import { reachOf } from './mask.ts';
import type { Spot } from './spot.ts';
import type { Pose, Task } from './task.ts';

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
