import { SAME_POINT } from '../../geometry/tolerance.ts';
import type { Size } from '../sheet-size.ts';
import type { Turn } from '../turned.ts';
import { findPlace, freeBoard, take } from './board.ts';
import { type Footprint, turnedFootprint } from './footprint.ts';
import { type Mask, maskOf, reachOf } from './mask.ts';
import type { Spot } from './spot.ts';

const CELL: Size = { width: 3, height: 3 };
const NO_INSET: Size = { width: 0, height: 0 };

export interface RollPose {
  readonly turn: Turn;
  readonly size: Size;
  readonly mask: Mask;
}

/** The ways a piece can be turned, in cells. */
export const rollPoses = (piece: Footprint, turns: readonly Turn[]): readonly RollPose[] =>
  turns.map((turn) => {
    const turned = turnedFootprint(piece, turn);
    const { x: width, y: height } = turned.box.max;
    return { turn, size: { width, height }, mask: maskOf(turned, CELL, NO_INSET) };
  });

export interface RolledOut {
  readonly spots: readonly Spot[];
  /** Length of roll that is used, mm. */
  readonly length: number;
}

/** Places the pieces in an order on a strip of a width (mm), each turned and laid so that it ends highest up. */
export const packRoll = (
  poses: readonly (readonly RollPose[])[],
  width: number,
  order: readonly number[],
): RolledOut | null => {
  const reach = reachOf(CELL);
  const rows = poses.reduce((sum, list) => sum + Math.max(...list.map((p) => p.mask.rows)) + reach, 0);
  const board = freeBoard(Math.ceil(width / CELL.width) + 1, rows, reach);
  const spots: Spot[] = new Array(poses.length);
  let length = 0;
  for (const index of order) {
    const found = highest(board, poses[index]!, width);
    if (found === null) return null;
    const { pose, at } = found;
    take(board, pose.mask, at[0], at[1]);
    const spot = { turn: pose.turn, left: at[0] * CELL.width, top: at[1] * CELL.height };
    spots[index] = spot;
    length = Math.max(length, spot.top + pose.size.height);
  }
  return { spots, length };
};

const highest = (board: ReturnType<typeof freeBoard>, poses: readonly RollPose[], width: number) => {
  let best: { pose: RollPose; at: readonly [number, number]; end: number } | null = null;
  for (const pose of poses) {
    const right = Math.floor((width - pose.size.width + SAME_POINT) / CELL.width);
    if (!(right >= 0)) continue;
    // Only places that end higher than the best so far are of use.
    const bottom = best ? best.end - 1 - pose.mask.rows : board.rows - pose.mask.rows;
    const at = findPlace(board, pose.mask, { left: 0, right, top: 0, bottom });
    if (at !== null) best = { pose, at, end: at[1] + pose.mask.rows };
  }
  return best;
};
