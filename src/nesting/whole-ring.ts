import { LAID_GRID } from '../geometry/tolerance.ts';
import type { Ring } from './ring.ts';

/** A ring on the grid, whole numbers, without doubled corners, corners on a straight line and spikes. */
export interface WholeRing {
  readonly count: number;
  readonly x: Float64Array;
  readonly y: Float64Array;
  /** The edge that leaves each corner. */
  readonly dx: Float64Array;
  readonly dy: Float64Array;
  /** Whether the ring turns inward at each corner. */
  readonly inward: Uint8Array;
  readonly convex: boolean;
}

/**
 * A ring, counter-clockwise, turned by the given cosine and sine and snapped to the grid; negated where sign is −1.
 * With a stir above 0 each corner is up to two grid steps off, for each stir in another way.
 */
export const wholeRing = (
  ring: Ring,
  cosine: number,
  sine: number,
  sign: 1 | -1,
  stir: number,
): WholeRing => {
  const off = (k: number): number => (stir === 0 ? 0 : ((k * 7 + stir * 11 + k * k * stir) % 5) - 2);
  const xs: number[] = [];
  const ys: number[] = [];
  for (let i = 0; i < ring.length; i += 2) {
    const [x, y] = [ring[i]! / LAID_GRID, ring[i + 1]! / LAID_GRID];
    xs.push(Math.round(sign * (x * cosine - y * sine)) + off(i));
    ys.push(Math.round(sign * (x * sine + y * cosine)) + off(i + 1));
  }
  dropFlat(xs, ys);
  const count = xs.length;
  const dx = Float64Array.from(xs, (x, i) => xs[(i + 1) % count]! - x);
  const dy = Float64Array.from(ys, (y, i) => ys[(i + 1) % count]! - y);
  const inward = Uint8Array.from(xs, (_, i) => {
    const before = (i + count - 1) % count;
    return dx[before]! * dy[i]! - dy[before]! * dx[i]! < 0 ? 1 : 0;
  });
  return {
    count,
    x: Float64Array.from(xs),
    y: Float64Array.from(ys),
    dx,
    dy,
    inward,
    convex: inward.every((one) => one === 0),
  };
};

/** Takes out every corner at which the ring does not turn, until none is left. */
const dropFlat = (xs: number[], ys: number[]): void => {
  for (let i = 0, checked = 0; checked < xs.length && xs.length > 2; ) {
    const count = xs.length;
    const before = (i + count - 1) % count;
    const after = (i + 1) % count;
    const flat =
      (xs[i]! - xs[before]!) * (ys[after]! - ys[i]!) === (ys[i]! - ys[before]!) * (xs[after]! - xs[i]!);
    if (flat) {
      xs.splice(i, 1);
      ys.splice(i, 1);
      checked = 0;
      i = i % Math.max(1, xs.length);
    } else {
      checked++;
      i = after;
    }
  }
};
