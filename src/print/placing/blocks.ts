import { SAME_POINT } from '../../geometry/tolerance.ts';
import type { Range } from './board.ts';
import type { Pose, Task } from './task.ts';

/** A rectangle of sheets. */
export interface Block {
  readonly column: number;
  readonly row: number;
  readonly columns: number;
  readonly rows: number;
}

/** A block that a pose may lie on: how many sheets it would open, and how many joins it crosses without need. */
export interface Candidate {
  readonly pose: Pose;
  readonly block: Block;
  readonly opens: number;
  readonly splits: number;
}
/** Blocks of sheets that a pose may lie on: the smallest it fits, and those one sheet longer or deeper. */
export const blocksFor = (pose: Pose, open: Uint8Array, width: number): readonly Candidate[] => {
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
export const rangeIn = ({ grid, cell, stride }: Task, pose: Pose, block: Block): Range => {
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

const steps = (spare: number, size: number): number => Math.max(0, Math.floor((spare + SAME_POINT) / size));

/** The sheets of a block on which a pose has cells; a strip that two sheets share counts for the earlier one. */
export const touched = (
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
