import { curvePart, directionAt } from './curve.ts';
import { type Arc, type Cubic, cubic, radius } from './path.ts';
import { add, scale } from './point.ts';
import { ARC_AS_CUBIC } from './tolerance.ts';

/**
 * Cubics in place of an arc, as few equal ones as keep the distance from the true circle below ARC_AS_CUBIC (mm).
 * The usual cubic over an angle θ, which touches the circle at its ends and its middle, swells by at most
 * r · 2/27 · sin⁶(θ/4) / cos²(θ/4).
 */
export const arcToCubics = (a: Arc): Cubic[] => {
  const r = radius(a);
  const allowed = (27 / 2) * (ARC_AS_CUBIC / r);
  const first = Math.min(allowed ** (1 / 6), 0.5);
  const quarter = Math.asin(Math.min((allowed * (1 - first * first)) ** (1 / 6), Math.sin(Math.PI / 8)));
  const count = Math.max(1, Math.ceil(Math.abs(a.sweep) / (4 * quarter)));
  const reach = (4 / 3) * Math.tan(Math.abs(a.sweep) / count / 4) * r;
  return Array.from({ length: count }, (_, i) => {
    const { from, to } = curvePart(a, i / count, (i + 1) / count);
    const start = directionAt(a, i / count);
    const end = directionAt(a, (i + 1) / count);
    return cubic(from, add(from, scale(start, reach)), add(to, scale(end, -reach)), to);
  });
};
