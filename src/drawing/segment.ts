import { flatten } from '../geometry/flatten.ts';
import type { Path } from '../geometry/path.ts';
import type { Point } from '../geometry/point.ts';
import { LABEL_CHORD } from '../geometry/tolerance.ts';

/** A straight stretch of wall or obstacle, mm. */
export interface Segment {
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
}

/** Straight stretches along a path. On a curve, chords: good for finding room, not for measuring. */
export const segmentsOf = (path: Path): Segment[] => {
  const points = flatten(path, LABEL_CHORD);
  return points.slice(1).map((to, i) => segment(points[i]!, to));
};

export const segment = (from: Point, to: Point): Segment => ({ x1: from.x, y1: from.y, x2: to.x, y2: to.y });
