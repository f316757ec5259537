import { boundsOf } from './bounds.ts';
import { type Box, boxesMeet } from './box.ts';
import { curveAt, curvePart } from './curve.ts';
import { type Arc, type Curve, isClosed, type Path, radius } from './path.ts';
import { between, distance, type Point } from './point.ts';
import { bernsteinRoots } from './roots.ts';
import { SAME_POINT } from './tolerance.ts';

/**
 * The parts of a path inside an upright box, in order, each of one run: lines stay lines, arcs arcs and cubics cubics,
 * split exactly where they cross the box. What lies on the box's edge counts as inside; a mere touch from outside does
 * not. A closed path that is inside throughout stays closed; one that leaves and comes back is not cut at its start.
 */
export const clipToBox = (path: Path, box: Box): Path[] => {
  const runs: Curve[][] = [];
  let open = false;
  for (const curve of path) {
    for (const { part, inside } of split(curve, box)) {
      if (inside && open) runs.at(-1)!.push(part);
      else if (inside) runs.push([part]);
      open = inside;
    }
  }
  // Does a closed path run on inside through its start?
  const [first, last] = [runs[0], runs.at(-1)];
  if (open && first && last && first !== last && isClosed(path) && first[0]!.from === path[0]!.from) {
    return [[...last, ...first], ...runs.slice(1, -1)];
  }
  return runs;
};

/** What is left of a polygon where a distance from a straight side is not negative. A dent it reaches over may be left closed along that side. */
export const cutPolygon = (corners: readonly Point[], depth: (p: Point) => number): readonly Point[] =>
  corners.flatMap((p, i) => {
    const next = corners[(i + 1) % corners.length]!;
    const [d0, d1] = [depth(p), depth(next)];
    const crossing = d0 < 0 !== d1 < 0 ? [between(p, next, d0 / (d0 - d1))] : [];
    return d0 < 0 ? crossing : [p, ...crossing];
  });

/** What is left of a polygon inside an upright box, cut side by side of it (Sutherland and Hodgman 1974). */
export const polygonInBox = (corners: readonly Point[], { min, max }: Box): readonly Point[] => {
  const depths: readonly ((p: Point) => number)[] = [
    (p) => p.x - min.x,
    (p) => max.x - p.x,
    (p) => p.y - min.y,
    (p) => max.y - p.y,
  ];
  return depths.reduce(cutPolygon, corners);
};

interface Part {
  readonly part: Curve;
  readonly inside: boolean;
}

const split = (curve: Curve, box: Box): Part[] => {
  const bounds = boundsOf([curve]);
  if (!boxesMeet(bounds, box)) return [{ part: curve, inside: false }];
  if (holds(box, bounds.min) && holds(box, bounds.max)) return [{ part: curve, inside: true }];
  const knots = apart(curve, [
    ...levels(curve, 'x', box.min.x),
    ...levels(curve, 'x', box.max.x),
    ...levels(curve, 'y', box.min.y),
    ...levels(curve, 'y', box.max.y),
  ]);
  return knots.slice(1).map((t1, i) => {
    const t0 = knots[i]!;
    return { part: curvePart(curve, t0, t1), inside: holds(box, curveAt(curve, (t0 + t1) / 2)) };
  });
};

const holds = ({ min, max }: Box, { x, y }: Point): boolean =>
  x >= min.x - SAME_POINT && x <= max.x + SAME_POINT && y >= min.y - SAME_POINT && y <= max.y + SAME_POINT;

/** From 0 to 1 in order, without those that would part no more than a point. */
const apart = (curve: Curve, parameters: readonly number[]): number[] => {
  const knots = [0];
  const end = curve.to;
  for (const t of [...parameters].sort((p, q) => p - q)) {
    const p = curveAt(curve, t);
    const last = knots.at(-1)!;
    // A turning point between keeps two parameters apart though their points are one.
    const middle = curveAt(curve, (last + t) / 2);
    if (distance(p, curveAt(curve, last)) + distance(p, middle) <= 2 * SAME_POINT) continue;
    if (distance(p, end) + distance(end, curveAt(curve, (t + 1) / 2)) <= 2 * SAME_POINT) continue;
    knots.push(t);
  }
  return [...knots, 1];
};

/** The parameters inside a curve where one coordinate has a value. */
export const levels = (curve: Curve, axis: 'x' | 'y', value: number): number[] => {
  const [from, to] = [curve.from[axis] - value, curve.to[axis] - value];
  if (curve.kind === 'line') return from < 0 === to < 0 ? [] : [from / (from - to)];
  if (curve.kind === 'arc') return arcLevels(curve, axis, value);
  return bernsteinRoots([from, curve.c1[axis] - value, curve.c2[axis] - value, to]);
};

const arcLevels = (a: Arc, axis: 'x' | 'y', value: number): number[] => {
  const cosine = (value - a.centre[axis]) / radius(a);
  if (!(Math.abs(cosine) < 1)) return [];
  const across = axis === 'x' ? 0 : Math.PI / 2;
  const half = Math.acos(cosine);
  const start = Math.atan2(a.from.y - a.centre.y, a.from.x - a.centre.x);
  const way = Math.sign(a.sweep);
  return [across + half, across - half].flatMap((angle) => {
    const turn = ((((angle - start) * way) % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI);
    return turn < Math.abs(a.sweep) ? [turn / Math.abs(a.sweep)] : [];
  });
};
