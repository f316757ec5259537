import { type Cubic, cubic, type Path } from './path.ts';
import { add, between, distance, dot, norm, type Point, scale, subtract, unit } from './point.ts';
import { FIT } from './tolerance.ts';

/**
 * Smooth cubics through a dense row of points, none of them further than the tolerance (mm) from the curve.
 * Tangents at the ends may be given (unit vectors, in the direction of travel); otherwise they are taken from the points.
 * Least squares on chord-length parameters, re-projected and split where it misses
 * (Schneider, "An algorithm for automatically fitting digitized curves", Graphics Gems, 1990).
 */
export const fitPath = (
  points: readonly Point[],
  { start, end, tolerance = FIT }: { start?: Point; end?: Point; tolerance?: number } = {},
): Path => {
  const dense = points.filter((p, i) => i === 0 || distance(p, points[i - 1]!) > 1e-9);
  if (dense.length < 2) throw new RangeError('a curve needs two points apart');
  const first = start ?? tangentAtEnd(dense[0]!, dense[1]!, dense[2]);
  const last = end ?? scale(tangentAtEnd(dense.at(-1)!, dense.at(-2)!, dense.at(-3)), -1);
  return fitRange(dense, 0, dense.length - 1, first, last, tolerance);
};

/** Direction at p of the parabola through p, q and r. */
const tangentAtEnd = (p: Point, q: Point, r: Point | undefined): Point => {
  if (!r) return unit(subtract(q, p));
  const [a, b] = [distance(p, q), distance(p, q) + distance(q, r)];
  return unit(subtract(scale(subtract(q, p), b / a), scale(subtract(r, p), a / b)));
};

/** Direction at q of the parabola through p, q and r. */
const tangentBetween = (p: Point, q: Point, r: Point): Point => {
  const [a, b] = [distance(p, q), distance(q, r)];
  return unit(add(scale(subtract(q, p), b / a), scale(subtract(r, q), a / b)));
};

const REPROJECTIONS = 4;

function fitRange(
  points: readonly Point[],
  from: number,
  to: number,
  start: Point,
  end: Point,
  tolerance: number,
): Path {
  const [p, q] = [points[from]!, points[to]!];
  if (to - from === 1) {
    const third = distance(p, q) / 3;
    return [cubic(p, add(p, scale(start, third)), subtract(q, scale(end, third)), q)];
  }
  let params = chordParams(points, from, to);
  let worst = { error: Infinity, at: (from + to) >> 1 };
  for (let round = 0; round <= REPROJECTIONS; round++) {
    const curve = leastSquares(points, from, params, start, end);
    worst = furthest(points, from, params, curve);
    if (worst.error <= tolerance) return [curve];
    // Far off? Then better parameters will not save it: split at once.
    if (worst.error > 100 * tolerance) break;
    params = params.map((u, i) => reproject(curve, points[from + i]!, u));
  }
  const middle = Math.min(Math.max(worst.at, from + 1), to - 1);
  const tangent = tangentBetween(points[middle - 1]!, points[middle]!, points[middle + 1]!);
  return [
    ...fitRange(points, from, middle, start, tangent, tolerance),
    ...fitRange(points, middle, to, tangent, end, tolerance),
  ];
}

const chordParams = (points: readonly Point[], from: number, to: number): number[] => {
  const sums = [0];
  for (let i = from + 1; i <= to; i++) sums.push(sums.at(-1)! + distance(points[i]!, points[i - 1]!));
  const total = sums.at(-1)!;
  return sums.map((s) => s / total);
};

/** The cubic with the given end tangents that lies nearest to the points at their parameters. */
function leastSquares(
  points: readonly Point[],
  from: number,
  params: readonly number[],
  start: Point,
  end: Point,
): Cubic {
  const p = points[from]!;
  const q = points[from + params.length - 1]!;
  let [c00, c01, c11, x0, x1] = [0, 0, 0, 0, 0];
  for (let i = 1; i < params.length - 1; i++) {
    const u = params[i]!;
    const v = 1 - u;
    const [b0, b1, b2, b3] = [v * v * v, 3 * u * v * v, 3 * u * u * v, u * u * u];
    const rest = subtract(points[from + i]!, add(scale(p, b0 + b1), scale(q, b2 + b3)));
    c00 += b1 * b1;
    c01 -= b1 * b2 * dot(start, end);
    c11 += b2 * b2;
    x0 += b1 * dot(start, rest);
    x1 -= b2 * dot(end, rest);
  }
  const determinant = c00 * c11 - c01 * c01;
  const chord = distance(p, q);
  let [a, b] = [(x0 * c11 - x1 * c01) / determinant, (c00 * x1 - c01 * x0) / determinant];
  // Have the handles run away? Then a third of the chord is a safe start for splitting.
  if (!(a > chord * 1e-3 && b > chord * 1e-3)) [a, b] = [chord / 3, chord / 3];
  return cubic(p, add(p, scale(start, a)), subtract(q, scale(end, b)), q);
}

const at = ({ from, c1, c2, to }: Cubic, u: number): Point => {
  const ab = between(from, c1, u);
  const bc = between(c1, c2, u);
  const cd = between(c2, to, u);
  return between(between(ab, bc, u), between(bc, cd, u), u);
};

const furthest = (points: readonly Point[], from: number, params: readonly number[], curve: Cubic) =>
  params.reduce(
    (worst, u, i) => {
      const error = distance(at(curve, u), points[from + i]!);
      return error > worst.error ? { error, at: from + i } : worst;
    },
    { error: 0, at: from },
  );

/** One Newton step towards the parameter of the point on the curve nearest to p. */
const reproject = (curve: Cubic, p: Point, u: number): number => {
  const { from, c1, c2, to } = curve;
  const v = 1 - u;
  const [d0, d1, d2] = [subtract(c1, from), subtract(c2, c1), subtract(to, c2)];
  const first = scale(add(add(scale(d0, v * v), scale(d1, 2 * u * v)), scale(d2, u * u)), 3);
  const second = scale(add(scale(subtract(d1, d0), v), scale(subtract(d2, d1), u)), 6);
  const miss = subtract(at(curve, u), p);
  const slope = norm(first) ** 2 + dot(miss, second);
  if (!(Math.abs(slope) > 0)) return u;
  return Math.min(1, Math.max(0, u - dot(miss, first) / slope));
};
