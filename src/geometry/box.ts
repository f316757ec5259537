import { type Point, point } from './point.ts';

/** An upright rectangle. */
export interface Box {
  readonly min: Point;
  readonly max: Point;
}

export const boxOf = (points: Iterable<Point>): Box => {
  let [x0, y0, x1, y1] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const { x, y } of points) {
    if (x < x0) x0 = x;
    if (y < y0) y0 = y;
    if (x > x1) x1 = x;
    if (y > y1) y1 = y;
  }
  return { min: point(x0, y0), max: point(x1, y1) };
};

export const boxWidth = (b: Box): number => b.max.x - b.min.x;
export const boxHeight = (b: Box): number => b.max.y - b.min.y;
export const boxCentre = (b: Box): Point => point((b.min.x + b.max.x) / 2, (b.min.y + b.max.y) / 2);
export const boxUnion = (boxes: Iterable<Box>): Box => boxOf([...boxes].flatMap((b) => [b.min, b.max]));
/** The box grown by a margin on all sides, mm. */
export const boxGrown = (b: Box, by: number): Box => ({
  min: point(b.min.x - by, b.min.y - by),
  max: point(b.max.x + by, b.max.y + by),
});
export const boxesMeet = (a: Box, b: Box): boolean =>
  a.min.x <= b.max.x && b.min.x <= a.max.x && a.min.y <= b.max.y && b.min.y <= a.max.y;
