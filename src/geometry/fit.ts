import { type Cubic, cubic, type Path } from './path.ts';
import { add, distance, dot, type Point, scale, subtract, unit } from './point.ts';
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
  const params = chordParams(points, from, to);
  let split = (from + to) >> 1;
  for (let round = 0; round <= REPROJECTIONS; round++) {
    const curve = leastSquares(points, from, params, start, end);
    const worst = reproject(points, from, params, curve);
    if (worst.error <= tolerance) return [curve];
    split = worst.at;
    // Far off? Then better parameters will not save it: split at once.
    if (worst.error > FAR * tolerance) break;
  }
  const middle = Math.min(Math.max(split, from + 1), to - 1);
  const tangent = tangentBetween(points[middle - 1]!, points[middle]!, points[middle + 1]!);
  return [
    ...fitRange(points, from, middle, start, tangent, tolerance),
    ...fitRange(points, middle, to, tangent, end, tolerance),
  ];
}

/** Further off than this many tolerances, a cubic is not worth re-parametrising. */
const FAR = 20;

/** Plain numbers, as in `reproject`: this runs for every stretch that is tried. */
const chordParams = (points: readonly Point[], from: number, to: number): Float64Array => {
  const params = new Float64Array(to - from + 1);
  let total = 0;
  for (let i = 1; i < params.length; i++) {
    const [p, q] = [points[from + i - 1]!, points[from + i]!];
    const [dx, dy] = [q.x - p.x, q.y - p.y];
    total += Math.sqrt(dx * dx + dy * dy);
    params[i] = total;
  }
  for (let i = 1; i < params.length; i++) params[i] = params[i]! / total;
  return params;
};

/**
 * Handles within these parts of the chord make an honest curve. Half a circle's are two thirds of it; far longer ones
 * make a loop, which may run between the points unnoticed.
 */
const SHORT = 0.1;
const LONG = 1;

/** The cubic with the given end tangents that lies nearest to the points at their parameters. */
function leastSquares(
  points: readonly Point[],
  from: number,
  params: Float64Array,
  start: Point,
  end: Point,
): Cubic {
  const p = points[from]!;
  const q = points[from + params.length - 1]!;
  const together = dot(start, end);
  let [c00, c01, c11, x0, x1] = [0, 0, 0, 0, 0];
  for (let i = 1; i < params.length - 1; i++) {
    const u = params[i]!;
    const v = 1 - u;
    const [b1, b2] = [3 * u * v * v, 3 * u * u * v];
    const [head, tail] = [v * v * v + b1, b2 + u * u * u];
    const at = points[from + i]!;
    const restX = at.x - p.x * head - q.x * tail;
    const restY = at.y - p.y * head - q.y * tail;
    c00 += b1 * b1;
    c01 -= b1 * b2 * together;
    c11 += b2 * b2;
    x0 += b1 * (start.x * restX + start.y * restY);
    x1 -= b2 * (end.x * restX + end.y * restY);
  }
  const determinant = c00 * c11 - c01 * c01;
  const chord = distance(p, q);
  let [a, b] = [(x0 * c11 - x1 * c01) / determinant, (c00 * x1 - c01 * x0) / determinant];
  // Have the handles run away? Then a third of the chord is a safe start for splitting.
  const sound = (handle: number) => handle > chord * SHORT && handle < chord * LONG;
  if (!(sound(a) && sound(b))) [a, b] = [chord / 3, chord / 3];
  return cubic(p, add(p, scale(start, a)), subtract(q, scale(end, b)), q);
}

/**
 * The point that misses the curve by most, and one Newton step of every parameter (changed in place) towards the foot of
 * its point. Plain numbers throughout: this runs for every point of every outline while a slider is dragged.
 */
const reproject = (points: readonly Point[], from: number, params: Float64Array, curve: Cubic) => {
  const { from: p, c1, c2, to: q } = curve;
  let [most, at] = [0, from];
  for (let i = 1; i < params.length - 1; i++) {
    const u = params[i]!;
    const v = 1 - u;
    const [b0, b1, b2, b3] = [v * v * v, 3 * u * v * v, 3 * u * u * v, u * u * u];
    const target = points[from + i]!;
    const missX = b0 * p.x + b1 * c1.x + b2 * c2.x + b3 * q.x - target.x;
    const missY = b0 * p.y + b1 * c1.y + b2 * c2.y + b3 * q.y - target.y;
    const miss = missX * missX + missY * missY;
    if (miss > most) [most, at] = [miss, from + i];
    const [d0, d1, d2] = [3 * v * v, 6 * u * v, 3 * u * u];
    const dx = d0 * (c1.x - p.x) + d1 * (c2.x - c1.x) + d2 * (q.x - c2.x);
    const dy = d0 * (c1.y - p.y) + d1 * (c2.y - c1.y) + d2 * (q.y - c2.y);
    const ddx = 6 * v * (c2.x - 2 * c1.x + p.x) + 6 * u * (q.x - 2 * c2.x + c1.x);
    const ddy = 6 * v * (c2.y - 2 * c1.y + p.y) + 6 * u * (q.y - 2 * c2.y + c1.y);
    const slope = dx * dx + dy * dy + missX * ddx + missY * ddy;
    if (Math.abs(slope) > 0) params[i] = Math.min(1, Math.max(0, u - (missX * dx + missY * dy) / slope));
  }
  return { error: Math.sqrt(most), at };
};
