import { add, norm, type Point, point, scale, subtract, unit } from './point.ts';
import { distance3, type Point3 } from './space.ts';
import { SAME_POINT } from './tolerance.ts';

/**
 * A ruled strip between two rails in space: ruling i is the straight line from left[i] to right[i].
 * A rail may stand still while the other goes on (the rulings then fan from a point).
 */
export interface Strip {
  readonly left: readonly Point3[];
  readonly right: readonly Point3[];
}

/** The same two rails, flat. */
export interface FlatStrip {
  readonly left: readonly Point[];
  readonly right: readonly Point[];
}

/**
 * Rolls a strip out flat, triangle by triangle: every rail step, ruling and diagonal keeps its length.
 * The first ruling is laid from the origin along +x; the strip runs on towards +y.
 * Exact for the triangles; a smooth developable surface sampled every h mm is met within about h²/24 of its curvature
 * squared, which the callers' sampling keeps under 0.005 mm.
 */
export const unroll = (strip: Strip): FlatStrip => {
  const count = strip.left.length;
  if (count < 2 || strip.right.length !== count)
    throw new RangeError('a strip needs two rails of equal count');
  const left: Point[] = [point(0, 0)];
  const right: Point[] = [point(distance3(strip.left[0]!, strip.right[0]!), 0)];
  if (!(right[0]!.x > SAME_POINT)) throw new RangeError('a strip cannot start on a ruling without length');
  for (let i = 1; i < count; i++) {
    const [l0, r0, l1, r1] = [strip.left[i - 1]!, strip.right[i - 1]!, strip.left[i]!, strip.right[i]!];
    const [flatL, flatR] = [left[i - 1]!, right[i - 1]!];
    const nextL = apex(flatL, flatR, distance3(l0, l1), distance3(r0, l1));
    left.push(nextL);
    right.push(apex(nextL, flatR, distance3(l1, r1), distance3(r0, r1)));
  }
  return { left, right };
};

/** The point at two distances from p and q, on the left of the way from p to q. */
const apex = (p: Point, q: Point, fromP: number, fromQ: number): Point => {
  if (fromP <= SAME_POINT) return p;
  if (fromQ <= SAME_POINT) return q;
  const base = subtract(q, p);
  const d = norm(base);
  const ahead = unit(base);
  const along = (fromP * fromP - fromQ * fromQ + d * d) / (2 * d);
  const aside = Math.sqrt(Math.max(0, fromP * fromP - along * along));
  return add(p, add(scale(ahead, along), scale(point(-ahead.y, ahead.x), aside)));
};
