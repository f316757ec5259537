import type { Point } from '../geometry/point.ts';
import type { Sheet } from './sheet.ts';

/** How the plane is moved: turned by an angle (cosine and sine), turned over before that or not, and shifted. */
export interface Motion {
  readonly cos: number;
  readonly sin: number;
  readonly over: 1 | -1;
  readonly from: Point;
  readonly to: Point;
}

export const moved = ({ cos, sin, over, from, to }: Motion, p: Point): Point => {
  const [x, y] = [over * (p.x - from.x), p.y - from.y];
  return { x: to.x + cos * x - sin * y, y: to.y + sin * x + cos * y };
};

export const movedBack = ({ cos, sin, over, from, to }: Motion, p: Point): Point => {
  const [x, y] = [p.x - to.x, p.y - to.y];
  return { x: from.x + over * (cos * x + sin * y), y: from.y + cos * y - sin * x };
};

/** A net moved on the flat. */
export const laidBy = ({ cos, sin, over, from, to }: Motion, net: Sheet): Sheet => {
  const flat = new Float64Array(net.flat.length);
  for (let k = 0; k < flat.length; k += 2) {
    const [x, y] = [over * (net.flat[k]! - from.x), net.flat[k + 1]! - from.y];
    flat[k] = to.x + cos * x - sin * y;
    flat[k + 1] = to.y + sin * x + cos * y;
  }
  return { ...net, flat };
};
