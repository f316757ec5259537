import { curveAt } from './curve.ts';
import { type Curve, type Path, pathStart, radius } from './path.ts';
import { norm, type Point, point } from './point.ts';

/**
 * Points on the path, both ends with them, so close that the straight lines between them stay within a tolerance (mm)
 * of the path. Of a closed path the last point is the first again. Throws RangeError unless the tolerance is positive.
 */
export const flatten = (path: Path, tolerance: number): Point[] => {
  if (!(tolerance > 0)) throw new RangeError('a path can be flattened only within a positive tolerance');
  if (path.length === 0) return [];
  const points = [pathStart(path)];
  for (const curve of path) {
    const count = pieces(curve, tolerance);
    for (let i = 1; i <= count; i++) points.push(curveAt(curve, i / count));
  }
  return points;
};

/** How many chords at equal steps of the parameter keep within the tolerance. */
const pieces = (curve: Curve, tolerance: number): number => {
  if (curve.kind === 'line') return 1;
  if (curve.kind === 'arc') {
    // A chord over an angle leaves the circle by r (1 - cos(angle / 2)).
    const cosine = Math.max(1 - tolerance / radius(curve), 0);
    return Math.max(1, Math.ceil(Math.abs(curve.sweep) / (2 * Math.acos(cosine))));
  }
  const { from, c1, c2, to } = curve;
  // A chord leaves the curve by at most step² / 8 of the second derivative, which is largest at an end.
  const bend = 6 * Math.max(norm(bendOf(from, c1, c2)), norm(bendOf(c1, c2, to)));
  return Math.max(1, Math.ceil(Math.sqrt(bend / (8 * tolerance))));
};

const bendOf = (p: Point, q: Point, r: Point): Point => point(p.x - 2 * q.x + r.x, p.y - 2 * q.y + r.y);
