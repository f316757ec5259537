import { type Arc, type Cubic, type Curve, cubic, line, radius } from './path.ts';
import {
  between,
  distance,
  dot,
  left,
  ORIGIN,
  type Point,
  point,
  rotate,
  scale,
  subtract,
  unit,
} from './point.ts';
import { SAME_POINT } from './tolerance.ts';

/** The point at a parameter from 0 (start) to 1 (end). On lines and arcs the parameter is the share of the length. */
export const curveAt = (curve: Curve, t: number): Point => {
  if (t === 0) return curve.from;
  if (t === 1) return curve.to;
  if (curve.kind === 'line') return between(curve.from, curve.to, t);
  if (curve.kind === 'arc') return rotate(curve.from, curve.sweep * t, curve.centre);
  return cubicAt(curve, t);
};

const cubicAt = ({ from, c1, c2, to }: Cubic, t: number): Point => {
  const s = 1 - t;
  const [b0, b1, b2, b3] = [s * s * s, 3 * s * s * t, 3 * s * t * t, t * t * t];
  return point(
    b0 * from.x + b1 * c1.x + b2 * c2.x + b3 * to.x,
    b0 * from.y + b1 * c1.y + b2 * c2.y + b3 * to.y,
  );
};

/** How fast the point moves with the parameter: mm per unit of t. */
export const velocityAt = (curve: Curve, t: number): Point => {
  if (curve.kind === 'line') return subtract(curve.to, curve.from);
  if (curve.kind === 'arc')
    return scale(left(rotate(subtract(curve.from, curve.centre), curve.sweep * t)), curve.sweep);
  const { from, c1, c2, to } = curve;
  const s = 1 - t;
  const [b0, b1, b2] = [3 * s * s, 6 * s * t, 3 * t * t];
  return point(
    b0 * (c1.x - from.x) + b1 * (c2.x - c1.x) + b2 * (to.x - c2.x),
    b0 * (c1.y - from.y) + b1 * (c2.y - c1.y) + b2 * (to.y - c2.y),
  );
};

/** The second derivative by the parameter: mm per unit of t squared. */
export const accelerationAt = (curve: Curve, t: number): Point => {
  if (curve.kind === 'line') return ORIGIN;
  if (curve.kind === 'arc')
    return scale(rotate(subtract(curve.from, curve.centre), curve.sweep * t), -(curve.sweep ** 2));
  const { from, c1, c2, to } = curve;
  const s = 6 * (1 - t);
  return point(
    s * (c2.x - 2 * c1.x + from.x) + 6 * t * (to.x - 2 * c2.x + c1.x),
    s * (c2.y - 2 * c1.y + from.y) + 6 * t * (to.y - 2 * c2.y + c1.y),
  );
};

/**
 * The unit vector along the curve at a parameter. Where a cubic stands still (a control point on an end), the limit
 * from inside the curve. A curve without length has no direction and gives NaN.
 */
export const directionAt = (curve: Curve, t: number): Point => {
  if (curve.kind === 'arc') {
    const outward = unit(rotate(subtract(curve.from, curve.centre), curve.sweep * t));
    return scale(left(outward), Math.sign(curve.sweep));
  }
  const v = velocityAt(curve, t);
  if (curve.kind === 'line' || dot(v, v) > SAME_POINT ** 2) return unit(v);
  const a = accelerationAt(curve, t);
  // Standing still: just after, it moves along the acceleration; just before, against it.
  if (dot(a, a) > SAME_POINT ** 2) return scale(unit(a), t > 0.5 ? -1 : 1);
  return unit(subtract(curve.to, curve.from));
};

/** The part between two parameters, t0 < t1: exact, and of the same kind. */
export const curvePart = (curve: Curve, t0: number, t1: number): Curve => {
  if (t0 === 0 && t1 === 1) return curve;
  if (curve.kind === 'line') return line(curveAt(curve, t0), curveAt(curve, t1));
  if (curve.kind === 'arc') return arcPart(curve, t0, t1);
  return cubicPart(curve, t0, t1);
};

const arcPart = (a: Arc, t0: number, t1: number): Arc => ({
  kind: 'arc',
  from: curveAt(a, t0),
  to: curveAt(a, t1),
  centre: a.centre,
  sweep: a.sweep * (t1 - t0),
});

const cubicPart = (c: Cubic, t0: number, t1: number): Cubic => {
  // The part's control points are the curve's blossom at (t0, t0, t1) and (t0, t1, t1).
  const blossom = (u: number, v: number, w: number): Point => {
    const [ab, bc, cd] = [between(c.from, c.c1, u), between(c.c1, c.c2, u), between(c.c2, c.to, u)];
    return between(between(ab, bc, v), between(bc, cd, v), w);
  };
  return cubic(curveAt(c, t0), blossom(t0, t0, t1), blossom(t0, t1, t1), curveAt(c, t1));
};

/** The same curve walked the other way. */
export const reversedCurve = (curve: Curve): Curve => {
  const { from, to } = curve;
  if (curve.kind === 'line') return line(to, from);
  if (curve.kind === 'arc') return arcBetween(curve.centre, to, from, -curve.sweep);
  return cubic(to, curve.c2, curve.c1, from);
};

/** Whether the curve is too short to have a direction. */
export const isShort = (curve: Curve): boolean => {
  if (!(distance(curve.from, curve.to) <= SAME_POINT)) return false;
  if (curve.kind === 'line') return true;
  if (curve.kind === 'arc') return Math.abs(curve.sweep) * radius(curve) <= SAME_POINT;
  return distance(curve.from, curve.c1) <= SAME_POINT && distance(curve.from, curve.c2) <= SAME_POINT;
};

/** An arc about a centre between two points that are known to lie on its circle. */
export const arcBetween = (centre: Point, from: Point, to: Point, sweep: number): Arc => ({
  kind: 'arc',
  from,
  to,
  centre,
  sweep,
});

/** The same curve with its end set to a point that differs from it by rounding. */
export const endingAt = (curve: Curve, to: Point): Curve => {
  if (curve.kind === 'line') return line(curve.from, to);
  if (curve.kind === 'arc') return arcBetween(curve.centre, curve.from, to, curve.sweep);
  return cubic(curve.from, curve.c1, curve.c2, to);
};
