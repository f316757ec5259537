import { type Path, polygon } from '../../geometry/path.ts';
import { add, left, type Point, scale } from '../../geometry/point.ts';

/** A closed triangle with its tip at a point, pointing along a unit vector; length in mm, a third of it to each side. */
export const arrowhead = (tip: Point, along: Point, length: number): Path => {
  const back = add(tip, scale(along, -length));
  const side = scale(left(along), length * 0.32);
  return polygon([tip, add(back, side), add(back, scale(side, -1))]);
};
