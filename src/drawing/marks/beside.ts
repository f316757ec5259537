import { arcBetween, curvatureAt, directionAt } from '../../geometry/curve.ts';
import { type Curve, cubic, line, type Path, radius } from '../../geometry/path.ts';
import { add, left, type Point, scale, subtract, unit } from '../../geometry/point.ts';

/**
 * A line drawn beside a smooth path, mm to its left: for the eye, not for cutting. Exact for lines and arcs; a cubic
 * keeps the ends and end curvatures of its parallel. An arc that would shrink to nothing is left where it is.
 */
export const beside = (path: Path, by: number): Path => path.map((curve) => besideCurve(curve, by));

const besideCurve = (curve: Curve, by: number): Curve => {
  const from = add(curve.from, scale(left(directionAt(curve, 0)), by));
  const to = add(curve.to, scale(left(directionAt(curve, 1)), by));
  if (curve.kind === 'line') return line(from, to);
  if (curve.kind === 'arc') {
    const inward = by * Math.sign(curve.sweep);
    return radius(curve) > inward ? arcBetween(curve.centre, from, to, curve.sweep) : curve;
  }
  const handle = (end: Point, control: Point, t: number): Point =>
    scale(subtract(control, end), Math.max(0, 1 - curvatureAt(curve, t) * by) || 0);
  return cubic(from, add(from, handle(curve.from, curve.c1, 0)), add(to, handle(curve.to, curve.c2, 1)), to);
};

/** The way text runs along a direction so that it is never upside down, radians in (−90°, 90°]. */
export const readingAngle = (along: Point): number => {
  const { x, y } = unit(along);
  const upsideDown = x < -1e-9 || (Math.abs(x) <= 1e-9 && y < 0);
  return upsideDown ? Math.atan2(-y, -x) : Math.atan2(y, x);
};
