import { curveAt } from './curve.ts';
import { type Arc, type Cubic, type Line, radius } from './path.ts';
import { cross, distance, dot, type Point, subtract } from './point.ts';
import { bernsteinRoots } from './roots.ts';
import { SAME_POINT } from './tolerance.ts';

/** The parameter of the point on a line nearest to p, or nothing where that lies beyond its ends. */
export const onLine = ({ from, to }: Line, p: Point): number | undefined => {
  const along = subtract(to, from);
  const square = dot(along, along);
  return within(dot(subtract(p, from), along) / square, Math.sqrt(square));
};

/** The parameter of a point that lies on the arc's circle, or nothing where it lies beyond the arc's ends. */
export const onArc = (a: Arc, p: Point): number | undefined => {
  const r = radius(a);
  const start = subtract(a.from, a.centre);
  const to = subtract(p, a.centre);
  const turn = Math.atan2(cross(start, to), dot(start, to)) * Math.sign(a.sweep);
  const sweep = Math.abs(a.sweep);
  // Of the turns that differ by whole circles, the one within the arc, or the one just before its start.
  const forward = turn < 0 ? turn + 2 * Math.PI : turn;
  return within(forward / sweep, sweep * r) ?? within((forward - 2 * Math.PI) / sweep, sweep * r);
};

/** The parameter itself, clamped to the ends where it is over by less than a point. */
const within = (t: number, length: number): number | undefined => {
  const slack = SAME_POINT / length;
  if (!(t >= -slack && t <= 1 + slack)) return undefined;
  return Math.min(Math.max(t, 0), 1);
};

/** The parameter of a point that lies on the cubic to within a point, or nothing where it does not. */
export const onCubic = (c: Cubic, p: Point): number | undefined => {
  const [b0, b1, b2, b3] = [c.from, c.c1, c.c2, c.to].map((q) => subtract(q, p)) as [
    Point,
    Point,
    Point,
    Point,
  ];
  if (aside(b0, b1, b2, b3)) return undefined;
  const [d0, d1, d2] = [subtract(b1, b0), subtract(b2, b1), subtract(b3, b2)];
  // (cubic - p) · velocity, a polynomial of degree 5: nought where the distance is least.
  const slopes = [
    dot(b0, d0),
    (2 * dot(b0, d1) + 3 * dot(b1, d0)) / 5,
    (dot(b0, d2) + 6 * dot(b1, d1) + 3 * dot(b2, d0)) / 10,
    (3 * dot(b1, d2) + 6 * dot(b2, d1) + dot(b3, d0)) / 10,
    (3 * dot(b2, d2) + 2 * dot(b3, d1)) / 5,
    dot(b3, d2),
  ];
  return [0, ...bernsteinRoots(slopes), 1].find((t) => distance(curveAt(c, t), p) <= SAME_POINT);
};

/** Whether all four points lie clear of the origin on one side: left, right, above or below. */
const aside = (...points: readonly [Point, Point, Point, Point]): boolean =>
  points.every(({ x }) => x > SAME_POINT) ||
  points.every(({ x }) => x < -SAME_POINT) ||
  points.every(({ y }) => y > SAME_POINT) ||
  points.every(({ y }) => y < -SAME_POINT);
