import { crossings } from '../../../geometry/intersect.ts';
import { pathLength, pointAt, tangentAt } from '../../../geometry/measure.ts';
import { line } from '../../../geometry/path.ts';
import { add, distance, left, type Point, scale } from '../../../geometry/point.ts';
import type { TopAndSidesShape } from './top-and-sides-shape.ts';

/** How deep a side is in the middle of its lower edge, square to it, mm. */
export interface SideDepth {
  readonly from: Point;
  readonly to: Point;
  readonly depth: number;
}

const FAR = 1000;

export const sideDepth = ({ side: { lower, seam } }: TopAndSidesShape): SideDepth => {
  const middle = pathLength(lower) / 2;
  const from = pointAt(lower, middle);
  const ray = [line(from, add(from, scale(left(tangentAt(lower, middle)), FAR)))];
  const to = crossings(ray, seam)
    .map(({ point: p }) => p)
    .reduce((p, q) => (distance(q, from) < distance(p, from) ? q : p));
  return { from, to, depth: distance(from, to) };
};
