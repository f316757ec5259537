import type { Mask } from './mask.ts';

/**
 * Cells that are free or taken. Each holds how far its own stretch of the row goes on to the right: as a positive
 * number where it is free, as a negative one where it is taken.
 */
export interface Board {
  readonly columns: number;
  readonly rows: number;
  /** Spare cells on all sides, free for ever, so that wide masks may stand out. */
  readonly reach: number;
  readonly cells: Int16Array;
}

export const freeBoard = (columns: number, rows: number, reach: number): Board => {
  const width = columns + 2 * reach;
  const cells = new Int16Array(width * (rows + 2 * reach));
  for (let i = 0; i < width; i++) cells[i] = width - i;
  for (let filled = width; filled < cells.length; filled *= 2) cells.copyWithin(filled, 0, filled);
  return { columns, rows, reach, cells };
};

/** A stretch of cells in which a piece's upper left corner may lie, ends included. */
export interface Range {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** The first free place for a piece, row by row from the top or from the bottom: its column and row, or null. */
export const findPlace = (
  board: Board,
  mask: Mask,
  { left, right, top, bottom }: Range,
  fromBelow = false,
): readonly [number, number] | null => {
  for (let i = 0; i <= bottom - top; i++) {
    const row = fromBelow ? bottom - i : top + i;
    for (let column = left; column <= right; ) {
      const step = collision(board, mask, column, row);
      if (step === 0) return [column, row];
      column += step;
    }
  }
  return null;
};

/** 0 where a piece fits; else how many cells further right it could be clear of what it hit first. */
const collision = ({ cells, columns, reach }: Board, { wide }: Mask, column: number, row: number): number => {
  const width = columns + 2 * reach;
  const origin = (row + reach) * width + column + reach;
  for (let i = 0; i < wide.length; i += 3) {
    const at = origin + wide[i]! * width + wide[i + 1]!;
    const free = cells[at]!;
    if (free < 0) return -free;
    if (free < wide[i + 2]!) return free - cells[at + free]!;
  }
  return 0;
};

/** Takes the cells a piece covers. The board is changed. */
export const take = (
  { cells, columns, reach }: Board,
  { covered }: Mask,
  column: number,
  row: number,
): void => {
  const width = columns + 2 * reach;
  const origin = (row + reach) * width + column + reach;
  for (let i = 0; i < covered.length; i += 3) {
    const at = origin + covered[i]! * width + covered[i + 1]!;
    const end = at + covered[i + 2]!;
    cells.fill(-1, at, end);
    recount(cells, at - (at % width), at, end - 1);
  }
};

/** Counts the stretches of a row anew, from the cells that were taken to the left: those to their right stay as they are. */
const recount = (cells: Int16Array, start: number, first: number, last: number): void => {
  let run = cells[last + 1]!;
  for (let i = last; i >= start; i--) {
    const taken = cells[i]! < 0;
    const count = taken === run < 0 ? run + (taken ? -1 : 1) : taken ? -1 : 1;
    // Each hangs on the next one alone: is one left of them as it was, so are all before it.
    if (i < first && cells[i] === count) return;
    run = count;
    cells[i] = run;
  }
};
