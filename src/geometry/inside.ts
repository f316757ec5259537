import { curveAt } from './curve.ts';
import { type Arc, type Cubic, type Curve, type Path, radius } from './path.ts';
import { cross, type Point, subtract } from './point.ts';
import { bernsteinRoots, quadraticChanges } from './roots.ts';

/** Whether a point lies inside a closed path, curves taken as curves. On the path itself it can be either. */
export const contains = (closedPath: Path, p: Point): boolean => windingAround(closedPath, p) !== 0;

/** Whether a point lies inside a ring of points whose last is its first again: an odd number of its sides cross the level line to the left. */
export const isWithin = (ring: readonly Point[], { x, y }: Point): boolean => {
  let inside = false;
  for (let i = 1; i < ring.length; i++) {
    const [p, q] = [ring[i - 1]!, ring[i]!];
    if (p.y > y !== q.y > y && p.x + ((y - p.y) / (q.y - p.y)) * (q.x - p.x) < x) inside = !inside;
  }
  return inside;
};

/**
 * How many times a closed path runs around a point, + counter-clockwise: the crossings of the level line to the right
 * of the point, upward less downward. A curve's end is taken to be the next one's start, so none slips between.
 */
export const windingAround = (closedPath: Path, p: Point): number =>
  closedPath.reduce((sum, curve, i) => {
    const next = closedPath[i + 1] ?? closedPath[0]!;
    return sum + windingOf(curve, p, curve.from.y > p.y, next.from.y > p.y);
  }, 0);

/** One curve's share, given whether it starts and ends above the level line. */
const windingOf = (curve: Curve, p: Point, startsAbove: boolean, endsAbove: boolean): number => {
  const { kind, from, to } = curve;
  if (kind === 'line') {
    if (startsAbove === endsAbove) return 0;
    const upward = endsAbove ? 1 : -1;
    if (from.x > p.x && to.x > p.x) return upward;
    return cross(subtract(to, from), subtract(p, from)) * upward > 0 ? upward : 0;
  }
  if (isLeftOf(curve, p)) return 0;
  const knots = [0, ...turns(curve), 1];
  const above = knots.map((t) => curveAt(curve, t).y > p.y);
  above[0] = startsAbove;
  above[knots.length - 1] = endsAbove;
  // Between two turns the curve rises or falls all the way, and crosses the level line once or not at all.
  return knots.slice(1).reduce((sum, end, i) => {
    if (above[i] === above[i + 1]) return sum;
    return levelCrossing(curve, knots[i]!, end, p) > p.x ? sum + (above[i + 1] ? 1 : -1) : sum;
  }, 0);
};

const isLeftOf = (curve: Arc | Cubic, { x }: Point): boolean =>
  curve.kind === 'arc'
    ? curve.centre.x + radius(curve) < x
    : Math.max(curve.from.x, curve.c1.x, curve.c2.x, curve.to.x) < x;

/** The parameters inside a curve where it stops rising or falling. */
const turns = (curve: Arc | Cubic): number[] => {
  if (curve.kind === 'cubic') {
    const { from, c1, c2, to } = curve;
    return quadraticChanges(c1.y - from.y, c2.y - c1.y, to.y - c2.y);
  }
  const start = Math.atan2(curve.from.y - curve.centre.y, curve.from.x - curve.centre.x);
  const [low, high] = [Math.min(start, start + curve.sweep), Math.max(start, start + curve.sweep)];
  const found: number[] = [];
  for (let k = Math.ceil(low / Math.PI - 0.5); (k + 0.5) * Math.PI < high; k++) {
    const t = ((k + 0.5) * Math.PI - start) / curve.sweep;
    if (t > 0 && t < 1) found.push(t);
  }
  return curve.sweep < 0 ? found.reverse() : found;
};

/** Where the stretch of the curve between two turns crosses the point's level: the x of it. */
const levelCrossing = (curve: Arc | Cubic, t0: number, t1: number, p: Point): number => {
  const { from, to } = curve;
  if (curve.kind === 'arc') {
    const rise = p.y - curve.centre.y;
    const r = radius(curve);
    const aside = Math.sqrt(Math.max(0, (r - rise) * (r + rise)));
    return curve.centre.x + (curveAt(curve, (t0 + t1) / 2).x < curve.centre.x ? -aside : aside);
  }
  const levels = [from.y - p.y, curve.c1.y - p.y, curve.c2.y - p.y, to.y - p.y];
  const root = bernsteinRoots(levels).find((t) => t >= t0 && t <= t1);
  // None? Then it crosses within rounding of an end: the nearer one.
  const ends = [t0, t1].map((t) => curveAt(curve, t));
  const nearer = Math.abs(ends[0]!.y - p.y) < Math.abs(ends[1]!.y - p.y) ? ends[0]! : ends[1]!;
  return root === undefined ? nearer.x : curveAt(curve, root).x;
};
