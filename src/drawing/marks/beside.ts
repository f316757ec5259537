import { parallel } from '../../geometry/parallel.ts';
import type { Path } from '../../geometry/path.ts';
import { type Point, unit } from '../../geometry/point.ts';
import { SAME_POINT } from '../../geometry/tolerance.ts';

/** A line drawn beside a smooth path, mm to its left; the path itself where the parallel would vanish. */
export const beside = (path: Path, by: number): Path => {
  const shown = path.flatMap((curve) => parallel(curve, -by).flatMap((p) => (p.past ? [] : [p.curve])));
  return shown.length > 0 ? shown : path;
};

/** The way text runs along a direction so that it is never upside down, radians in (−90°, 90°]. */
export const readingAngle = (along: Point): number => {
  const { x, y } = unit(along);
  const upsideDown = Math.abs(x) <= SAME_POINT ? y < 0 : x < 0;
  return upsideDown ? Math.atan2(-y, -x) : Math.atan2(y, x);
};
