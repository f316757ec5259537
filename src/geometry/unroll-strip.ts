import { type Point, point } from './point.ts';
import type { StepLengths } from './smooth-steps.ts';
import { norm3, type Point3, subtract3 } from './space.ts';
import type { FlatStrip } from './strip.ts';
import { SAME_POINT } from './tolerance.ts';
import { checkStrip, type TriangleStrip } from './triangle-strip.ts';

/**
 * Rolls a strip of triangles out flat: every triangle keeps its three lengths, so that both flat rails have a point
 * for every point of the rails in space and their steps are as long. Steps of other lengths may be asked for (see
 * smoothSteps). left[0] lies on the origin; the first ruling that has a length is laid along +x, left to right, and
 * the strip runs on towards +y. A strip may begin or end in a point (how it then lies
 * is told by a very short ruling: turn it by its own landmarks); rails that meet in between are an error.
 * Exact for the triangles. For a smooth developable surface sampled every h mm, the rails come out short by about
 * h²κ²/24 of their length, κ their curvature in space, and a narrow strip bends where they do so by different
 * amounts; with smoothSteps all of this shrinks to the fourth power of h.
 */
export const unrollStrip = (strip: TriangleStrip, lengths?: StepLengths): FlatStrip => {
  checkStrip(strip);
  const width = gap(strip.left[0]!, strip.right[0]!);
  const left: Point[] = [point(0, 0)];
  const right: Point[] = [point(width > SAME_POINT ? width : 0, 0)];
  let [i, j] = [0, 0];
  for (const side of strip.steps) {
    const onLeft = side === 'left';
    const next = onLeft ? strip.left[i + 1]! : strip.right[j + 1]!;
    const step = onLeft ? lengths?.left[i] : lengths?.right[j];
    const fromP = onLeft && step !== undefined ? step : gap(next, strip.left[i]!);
    const fromQ = !onLeft && step !== undefined ? step : gap(next, strip.right[j]!);
    // Does the strip begin in a point? Then its first step gives the first ruling.
    const begins = i + j === 0 && right[0]!.x === 0;
    const flat = begins ? point(onLeft ? -fromQ : fromP, 0) : laid(left[i]!, right[j]!, fromP, fromQ);
    if (onLeft) left[++i] = flat;
    else right[++j] = flat;
  }
  return { left, right };
};

const gap = (p: Point3, q: Point3): number => norm3(subtract3(p, q));

/** The point at two distances from p and q, on the left of the way from p to q. */
const laid = (p: Point, q: Point, fromP: number, fromQ: number): Point => {
  const [dx, dy] = [q.x - p.x, q.y - p.y];
  const d = Math.sqrt(dx * dx + dy * dy);
  if (!(d > SAME_POINT)) throw new RangeError('the rails of a strip may meet at its ends alone');
  if (fromP <= SAME_POINT) return p;
  if (fromQ <= SAME_POINT) return q;
  const along = (fromP * fromP - fromQ * fromQ + d * d) / (2 * d);
  const aside = Math.sqrt(Math.max(0, fromP * fromP - along * along));
  return point(p.x + (along * dx - aside * dy) / d, p.y + (along * dy + aside * dx) / d);
};
