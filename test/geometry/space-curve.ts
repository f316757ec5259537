import { between3, distance3, norm3, type Point3, point3, scale3 } from '../../src/geometry/space.ts';

/** A curve in space: the point at a parameter from 0 (start) to 1 (end). */
export type SpaceCurve = (t: number) => Point3;

/** Directions of travel at the ends of a spline; any length. Without one, the end is free: no curvature there. */
export interface EndTangents {
  readonly start?: Point3;
  readonly end?: Point3;
}

/**
 * The smooth curve through every point: a cubic spline on chord-length parameters, curvature continuous, natural at
 * an end whose tangent is not given (C. de Boor, A Practical Guide to Splines, 1978: the same rule in each
 * coordinate). The parameter is the share of the chords' length. Two points without tangents give the straight line.
 * Needs two points or more, none twice in a row.
 */
export const splineInSpace = (points: readonly Point3[], { start, end }: EndTangents = {}): SpaceCurve => {
  const knots = [0];
  for (const [i, p] of points.slice(1).entries()) knots.push(knots[i]! + distance3(points[i]!, p));
  if (!(points.length > 1 && knots.every((k, i) => i === 0 || k > knots[i - 1]!)))
    throw new RangeError('a curve through points needs points apart');
  const slopes = (of: (p: Point3) => number) =>
    slopesOf(points.map(of), knots, start && of(unit3(start)), end && of(unit3(end)));
  const [sx, sy, sz] = [slopes((p) => p.x), slopes((p) => p.y), slopes((p) => p.z)];
  const total = knots.at(-1)!;
  return (t) => {
    const s = t * total;
    const i = spanOf(knots, s);
    const h = knots[i + 1]! - knots[i]!;
    const u = (s - knots[i]!) / h;
    const [p, q] = [points[i]!, points[i + 1]!];
    const at = (a: number, b: number, slope: Float64Array) =>
      hermite(a, b, slope[i]! * h, slope[i + 1]! * h, u);
    return point3(at(p.x, q.x, sx), at(p.y, q.y, sy), at(p.z, q.z, sz));
  };
};

/** The straight line between two points. */
export const straight =
  (from: Point3, to: Point3): SpaceCurve =>
  (t) =>
    between3(from, to, t);

const unit3 = (v: Point3): Point3 => {
  const length = norm3(v);
  if (!(length > 0)) throw new RangeError('an end tangent needs a direction');
  return scale3(v, 1 / length);
};

/** The cubic from a to b with given slopes at its ends, at u from 0 to 1. */
const hermite = (a: number, b: number, slopeA: number, slopeB: number, u: number): number => {
  const v = 1 - u;
  return v * v * (a * (1 + 2 * u) + slopeA * u) + u * u * (b * (1 + 2 * v) - slopeB * v);
};

/** The span whose knots hold s: the first or the last where s lies outside. */
const spanOf = (knots: readonly number[], s: number): number => {
  let [low, high] = [0, knots.length - 1];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (s < knots[middle]!) high = middle;
    else low = middle;
  }
  return low;
};

/** Solves the tridiagonal system that makes the second derivative continuous at every inner knot. */
const slopesOf = (
  values: readonly number[],
  knots: readonly number[],
  start: number | undefined,
  end: number | undefined,
): Float64Array => {
  const last = values.length - 1;
  const upper = new Float64Array(last + 1);
  const slopes = new Float64Array(last + 1);
  const step = (i: number) => knots[i + 1]! - knots[i]!;
  const chord = (i: number) => (values[i + 1]! - values[i]!) / step(i);
  for (let i = 0; i <= last; i++) {
    let [below, on, above, value] = [0, 1, 0, 0];
    if (i === 0) [on, above, value] = start === undefined ? [2, 1, 3 * chord(0)] : [1, 0, start];
    else if (i === last) [below, on, value] = end === undefined ? [1, 2, 3 * chord(i - 1)] : [0, 1, end];
    else {
      const [h, k] = [step(i - 1), step(i)];
      [below, on, above, value] = [k, 2 * (h + k), h, 3 * (k * chord(i - 1) + h * chord(i))];
    }
    const pivot = on - (i > 0 ? below * upper[i - 1]! : 0);
    upper[i] = above / pivot;
    slopes[i] = (value - (i > 0 ? below * slopes[i - 1]! : 0)) / pivot;
  }
  for (let i = last - 1; i >= 0; i--) slopes[i] = slopes[i]! - upper[i]! * slopes[i + 1]!;
  return slopes;
};
