import { cross3, norm3, type Point3, subtract3 } from './space.ts';

export type Side = 'left' | 'right';

/**
 * A strip of triangles between two rails in space, of any counts. It starts on the ruling from left[0] to right[0];
 * each step takes one rail on by one point, which makes one triangle, and ends on a new ruling. Seen from outside
 * with the strip running upwards, the left rail is on the left. The rails may meet in a point at the start, at the
 * end or at both.
 */
export interface TriangleStrip {
  readonly left: readonly Point3[];
  readonly right: readonly Point3[];
  /** left.length − 1 steps on the left and right.length − 1 on the right, in their order. */
  readonly steps: readonly Side[];
}

/** The triangles of the strip in their order: both ends of a ruling (left, right) and the point that follows them. */
export const trianglesOf = ({ left, right, steps }: TriangleStrip): readonly [Point3, Point3, Point3][] => {
  let [i, j] = [0, 0];
  return steps.map((side) => {
    const [p, q] = [left[i]!, right[j]!];
    return [p, q, side === 'left' ? left[++i]! : right[++j]!];
  });
};

/** Area of each triangle, mm²: flat it has the same. */
export const triangleAreas = (strip: TriangleStrip): readonly number[] =>
  trianglesOf(strip).map(([p, q, next]) => triangleArea(p, q, next));

const triangleArea = (p: Point3, q: Point3, r: Point3): number =>
  norm3(cross3(subtract3(q, p), subtract3(r, p))) / 2;

/** Fails loudly where the steps do not lead from the first ruling to the last. */
export const checkStrip = ({ left, right, steps }: TriangleStrip): void => {
  const lefts = steps.filter((side) => side === 'left').length;
  if (!(left.length > 0 && lefts === left.length - 1 && steps.length - lefts === right.length - 1))
    throw new RangeError('a strip needs one step for every point of a rail after its first');
};
