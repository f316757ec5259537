import type { Point } from '../geometry/point.ts';

/** A closed ring as x, y, x, y …, mm: what is walked millions of times. */
export type Ring = Float64Array;

export interface Box {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

export const ringOf = (points: readonly Point[]): Ring => {
  const ring = new Float64Array(points.length * 2);
  points.forEach(({ x, y }, i) => {
    ring[2 * i] = x;
    ring[2 * i + 1] = y;
  });
  return ring;
};

/** Positive counter-clockwise. */
export const areaOfRing = (ring: Ring): number => {
  const last = ring.length - 2;
  let twice = 0;
  for (let i = 0, h = last; i <= last; h = i, i += 2) {
    twice +=
      (ring[h]! - ring[0]!) * (ring[i + 1]! - ring[1]!) - (ring[i]! - ring[0]!) * (ring[h + 1]! - ring[1]!);
  }
  return twice / 2;
};

/** The ring counter-clockwise, whichever way it came. */
export const counterClockwise = (ring: Ring): Ring => {
  if (areaOfRing(ring) >= 0) return ring;
  const turned = new Float64Array(ring.length);
  for (let i = 0, k = ring.length - 2; k >= 0; i += 2, k -= 2) {
    turned[i] = ring[k]!;
    turned[i + 1] = ring[k + 1]!;
  }
  return turned;
};

export const boxOf = (ring: Ring): Box => {
  let [x0, y0, x1, y1] = [Infinity, Infinity, -Infinity, -Infinity];
  for (let i = 0; i < ring.length; i += 2) {
    x0 = Math.min(x0, ring[i]!);
    x1 = Math.max(x1, ring[i]!);
    y0 = Math.min(y0, ring[i + 1]!);
    y1 = Math.max(y1, ring[i + 1]!);
  }
  return { x0, y0, x1, y1 };
};

/** The ring turned about the origin, radians counter-clockwise, then shifted. */
export const moved = (ring: Ring, angle: number, dx: number, dy: number): Ring => {
  const [c, s] = turn(angle);
  const result = new Float64Array(ring.length);
  for (let i = 0; i < ring.length; i += 2) {
    const [x, y] = [ring[i]!, ring[i + 1]!];
    result[i] = x * c - y * s + dx;
    result[i + 1] = x * s + y * c + dy;
  }
  return result;
};

/** Cosine and sine, without rounding at quarter turns: what was upright stays upright. */
export const turn = (angle: number): readonly [number, number] => {
  const quarters = angle / (Math.PI / 2);
  const whole = Math.round(quarters);
  if (Math.abs(quarters - whole) > 1e-12) return [Math.cos(angle), Math.sin(angle)];
  return (
    [
      [1, 0],
      [0, 1],
      [-1, 0],
      [0, -1],
    ] as const
  )[((whole % 4) + 4) % 4]!;
};
