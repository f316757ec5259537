import { type Curve, type Path, pathStart, radius } from './path.ts';
import { cross, type Point, subtract } from './point.ts';

/**
 * The area a closed path encloses, mm², + counter-clockwise: exact, by Green's theorem curve by curve. An open path
 * is closed by the straight line from its end to its start.
 */
export const areaOf = (path: Path): number => {
  if (path.length === 0) return 0;
  // Seen from the path's own start, so that a small piece far out keeps its digits.
  const origin = pathStart(path);
  let sum = 0;
  for (const curve of path) sum += sweptArea(curve, origin);
  return sum;
};

/** The area swept by the line from a fixed point to a point moving along the curve. */
const sweptArea = (curve: Curve, origin: Point): number => {
  const from = subtract(curve.from, origin);
  const to = subtract(curve.to, origin);
  if (curve.kind === 'line') return cross(from, to) / 2;
  if (curve.kind === 'arc') {
    const centre = subtract(curve.centre, origin);
    return (radius(curve) ** 2 * curve.sweep + cross(centre, subtract(to, from))) / 2;
  }
  const c1 = subtract(curve.c1, origin);
  const c2 = subtract(curve.c2, origin);
  return (
    (3 / 20) *
    (2 * cross(from, c1) +
      cross(from, c2) +
      cross(from, to) / 3 +
      cross(c1, c2) +
      cross(c1, to) +
      2 * cross(c2, to))
  );
};
