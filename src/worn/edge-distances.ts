import { endKnots, knotCount, type Sheet } from './sheet.ts';
import { isOverRim } from './stitch.ts';

const LEAST_SLANT = 0.25;

/** Where a sheet has no edge: farther than anything, mm. */
export const FAR = 1e4;

/**
 * How far (mm, on the flat) each knot is from the left and the right rail, square to them, and from the first and the last ruling;
 * FAR where that ruling has no length, from all but the rim of a button or an eyelet, and from a rim that is no edge. And how
 * far along the left and the right rail its ruling stands.
 */
export const edgeDistances = (sheet: Sheet) => {
  const { rows, columns, flat, disc } = sheet;
  const edges = new Float32Array(4 * knotCount(sheet));
  const runs = new Float32Array(2 * knotCount(sheet));
  const gap = (p: number, q: number) =>
    Math.hypot(flat[2 * p]! - flat[2 * q]!, flat[2 * p + 1]! - flat[2 * q + 1]!);
  const last = columns - 1;
  const long = Array.from({ length: rows }, (_, row) => gap(row * columns, row * columns + last));
  const [lefts, middles, rights] = [0, last >> 1, last].map(alongColumn) as [number[], number[], number[]];
  const whole = middles.at(-1)!;
  const over = isOverRim(sheet);
  const overBoth = over && !(long[0]! > 1);
  const put = (row: number, left: number, right: number, k: number, share: number): void => {
    edges[4 * k] = disc || over ? FAR : long[row]! * share * left;
    edges[4 * k + 1] = overBoth ? FAR : long[row]! * (1 - share) * right;
    edges[4 * k + 2] = long[0]! > 1 && !disc ? middles[row]! : FAR;
    edges[4 * k + 3] = long.at(-1)! > 1 && !disc ? whole - middles[row]! : FAR;
    runs[2 * k] = lefts[row]!;
    runs[2 * k + 1] = rights[row]!;
  };
  for (let row = 0; row < rows; row++) {
    const [left, right] = [slant(row, 0), slant(row, last)];
    for (let j = 0; j < columns; j++) put(row, left, right, row * columns + j, j / last);
    const end = row === 0 ? 0 : 1;
    if ((row > 0 && row < rows - 1) || sheet.finer[end] === 0) continue;
    const knots = endKnots(sheet, end);
    for (const [i, k] of knots.entries()) put(row, left, right, k, i / (knots.length - 1));
  }
  return { edges, runs };

  /** The way along a column of knots, row by row. */
  function alongColumn(column: number): number[] {
    const along = [0];
    for (let row = 1; row < rows; row++) {
      const k = row * columns + column;
      along.push(along[row - 1]! + gap(k, k - columns));
    }
    return along;
  }

  /** The sine between a ruling and its rail; where the two run together, as at the top of an arch, a good part of one. */
  function slant(row: number, column: number): number {
    const [a, b] = [Math.max(0, row - 1), Math.min(rows - 1, row + 1)];
    const [p, q] = [a * columns + column, b * columns + column];
    const [r, s] = [row * columns, row * columns + last];
    const [ux, uy] = [flat[2 * q]! - flat[2 * p]!, flat[2 * q + 1]! - flat[2 * p + 1]!];
    const [vx, vy] = [flat[2 * s]! - flat[2 * r]!, flat[2 * s + 1]! - flat[2 * r + 1]!];
    const size = Math.hypot(ux, uy) * Math.hypot(vx, vy);
    return size > 1e-9 ? Math.max(LEAST_SLANT, Math.abs(ux * vy - uy * vx) / size) : 1;
  }
};
