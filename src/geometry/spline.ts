import { cubic, type Path } from './path.ts';
import { add, distance, type Point, scale, subtract } from './point.ts';

/**
 * The smooth curve through every point: a cubic spline on chord-length parameters, curvature continuous. It starts in a
 * given direction (unit vector) and ends free, without curvature. Needs two points or more, none twice in a row.
 */
export const splineThrough = (points: readonly Point[], start: Point): Path => {
  const steps = points.slice(1).map((p, i) => distance(p, points[i]!));
  if (!(steps.length > 0 && steps.every((h) => h > 0))) throw new RangeError('a spline needs points apart');
  const velocities = velocitiesAt(points, steps, start);
  return steps.map((h, i) => {
    const [p, q] = [points[i]!, points[i + 1]!];
    return cubic(p, add(p, scale(velocities[i]!, h / 3)), subtract(q, scale(velocities[i + 1]!, h / 3)), q);
  });
};

/** Solves the tridiagonal system that makes the second derivative continuous at every inner point. */
const velocitiesAt = (points: readonly Point[], steps: readonly number[], start: Point): readonly Point[] => {
  const last = points.length - 1;
  const diagonal: number[] = [1];
  const upper: number[] = [0];
  const right: Point[] = [start];
  const eliminate = (below: number, on: number, above: number, value: Point) => {
    const i = diagonal.length - 1;
    const factor = below / diagonal[i]!;
    diagonal.push(on - factor * upper[i]!);
    upper.push(above);
    right.push(subtract(value, scale(right[i]!, factor)));
  };
  const slope = (i: number) => scale(subtract(points[i + 1]!, points[i]!), 1 / steps[i]!);
  for (let i = 1; i < last; i++) {
    const [h, k] = [steps[i - 1]!, steps[i]!];
    eliminate(k, 2 * (h + k), h, scale(add(scale(slope(i - 1), k), scale(slope(i), h)), 3));
  }
  eliminate(1, 2, 0, scale(slope(last - 1), 3));
  const velocities: Point[] = [];
  for (let i = last; i >= 0; i--) {
    const next = velocities[0];
    const rest = next ? subtract(right[i]!, scale(next, upper[i]!)) : right[i]!;
    velocities.unshift(scale(rest, 1 / diagonal[i]!));
  }
  return velocities;
};
