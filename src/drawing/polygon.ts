import { boundsOf } from '../geometry/bounds.ts';
import { curveAt } from '../geometry/curve.ts';
import { line, type Path } from '../geometry/path.ts';
import { type Point, point } from '../geometry/point.ts';

/** A straight stretch of wall or obstacle, mm. */
export interface Segment {
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
}

/** Chords for each curve: enough to keep a label off a line, no more. */
const CHORDS = 10;

/** Straight stretches along a path. On a curve, chords: good for finding room, not for measuring. */
export const segmentsOf = (path: Path): Segment[] =>
  path.flatMap((curve) => {
    const count = curve.kind === 'line' ? 1 : CHORDS;
    const at = Array.from({ length: count + 1 }, (_, i) => curveAt(curve, i / count));
    return at.slice(1).map((to, i) => segment(at[i]!, to));
  });

export const segment = (from: Point, to: Point): Segment => ({ x1: from.x, y1: from.y, x2: to.x, y2: to.y });

/** The walls of an upright box, and a line through it so that nothing hides inside. */
export const boxSegments = (paths: readonly Path[]): Segment[] => {
  const { min, max } = boundsOf(paths.flat());
  return segmentsOf([
    line(min, point(max.x, min.y)),
    line(point(max.x, min.y), max),
    line(max, point(min.x, max.y)),
    line(point(min.x, max.y), min),
    line(min, max),
  ]);
};

/** Whether a point lies inside closed walls: an odd number of them cross the level line to its left. */
export const isInside = (walls: readonly Segment[], { x, y }: Point): boolean => {
  let inside = false;
  for (const { x1, y1, x2, y2 } of walls) {
    if (y1 > y !== y2 > y && x1 + ((y - y1) / (y2 - y1)) * (x2 - x1) < x) inside = !inside;
  }
  return inside;
};
