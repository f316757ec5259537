import { arcBetween, directionAt } from './curve.ts';
import { fitPath } from './fit.ts';
import { type Arc, line, type Path } from './path.ts';
import { cross, distance, dot, type Point, point, subtract } from './point.ts';
import { FIT } from './tolerance.ts';

export interface EdgeWish {
  /** Places in the row of points, the ends aside, where the edge keeps a sharp corner; ascending. */
  readonly corners?: readonly number[];
  /** Unit vectors along the edge at its ends, if they are known. */
  readonly start?: Point;
  readonly end?: Point;
  /** mm; FIT if not given. */
  readonly tolerance?: number;
}

/**
 * A dense row of points as an edge: from corner to corner one line or one arc where the points allow it within the
 * tolerance, smooth cubics otherwise. Starts and ends exactly on the first and last point and passes exactly through
 * the corners. A single point makes no edge: an empty path.
 */
export const fitEdge = (
  points: readonly Point[],
  { corners = [], start, end, tolerance = FIT }: EdgeWish = {},
): Path => {
  if (points.length === 1) return [];
  const stops = [0, ...corners, points.length - 1];
  if (!stops.every((stop, k) => k === 0 || stop > stops[k - 1]!))
    throw new RangeError('corners must stand in order, between the ends of their edge');
  return stops.slice(1).flatMap((to, k) =>
    fitRun(points.slice(stops[k]!, to + 1), {
      tolerance,
      ...(k === 0 && start ? { start } : {}),
      ...(k === stops.length - 2 && end ? { end } : {}),
    }),
  );
};

interface RunWish {
  readonly tolerance: number;
  readonly start?: Point;
  readonly end?: Point;
}

const fitRun = (points: readonly Point[], wish: RunWish): Path => {
  const [from, to] = [points[0]!, points.at(-1)!];
  if (isStraight(points, wish.tolerance)) return [line(from, to)];
  const arc = arcThrough(points, wish.tolerance);
  return arc && agrees(arc, wish) ? [arc] : fitPath(points, wish);
};

const isStraight = (points: readonly Point[], tolerance: number): boolean => {
  const [from, to] = [points[0]!, points.at(-1)!];
  const chord = distance(from, to);
  if (!(chord > tolerance)) return points.every((p) => distance(p, from) <= tolerance);
  const along = subtract(to, from);
  return points.every((p) => {
    const off = subtract(p, from);
    const share = dot(off, along) / chord;
    return (
      Math.abs(cross(along, off)) <= tolerance * chord && share >= -tolerance && share <= chord + tolerance
    );
  });
};

/** The arc through the first, middle and last point, if the others lie on it, in order. */
const arcThrough = (points: readonly Point[], tolerance: number): Arc | undefined => {
  const [p, q, r] = [points[0]!, points[points.length >> 1]!, points.at(-1)!];
  const centre = centreOf(p, q, r);
  if (!centre) return undefined;
  const radius = distance(centre, p);
  let sweep = 0;
  let side = 0;
  for (const [i, at] of points.entries()) {
    if (!(Math.abs(distance(centre, at) - radius) <= tolerance)) return undefined;
    if (i === 0) continue;
    const [a, b] = [subtract(points[i - 1]!, centre), subtract(at, centre)];
    const turn = Math.atan2(cross(a, b), dot(a, b));
    if (side === 0) side = Math.sign(turn);
    if (turn * side < 0) return undefined;
    sweep += turn;
  }
  return arcBetween(centre, p, r, sweep);
};

const centreOf = (p: Point, q: Point, r: Point): Point | undefined => {
  const [a, b] = [subtract(q, p), subtract(r, p)];
  const twice = 2 * cross(a, b);
  const [aa, bb] = [dot(a, a), dot(b, b)];
  const centre = point(p.x + (b.y * aa - a.y * bb) / twice, p.y + (a.x * bb - b.x * aa) / twice);
  return Number.isFinite(centre.x) && Number.isFinite(centre.y) ? centre : undefined;
};

/** Radians by which an arc may leave a known direction at its end. */
const SAME_DIRECTION = 1e-3;

const agrees = (arc: Arc, { start, end }: RunWish): boolean =>
  (!start || Math.abs(cross(directionAt(arc, 0), start)) <= SAME_DIRECTION) &&
  (!end || Math.abs(cross(directionAt(arc, 1), end)) <= SAME_DIRECTION);
