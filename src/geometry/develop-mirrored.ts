import type { Development } from './develop-strip.ts';
import { fitEdge } from './fit-edge.ts';
import { reversed } from './measure.ts';
import { type Point, point } from './point.ts';
import { smoothSteps } from './smooth-steps.ts';
import { between3, distance3, dot3, norm3, type Point3, subtract3 } from './space.ts';
import { FIT, SAME_POINT } from './tolerance.ts';
import { mirrored } from './transform.ts';
import type { Side } from './triangle-strip.ts';

export interface MirroredWish {
  /** Places in the rails, the ends aside, where both edges keep a sharp corner; ascending. */
  readonly corners?: readonly number[];
  /** mm; FIT if not given. */
  readonly tolerance?: number;
}

/**
 * The strip between two rails that are mirror images of one another point by point (a gore), rolled flat: upright
 * about x = 0, its first ruling on y = 0, its left edge the exact mirror image of its right one, both from the
 * strip's start to its end. Such a strip is a cylinder: its rulings are square to the mirror, keep their width, and
 * stand as far apart as along the curve that runs midway between the rails. No rulings need choosing, and it is
 * accurate as developStrip is.
 */
export const developMirrored = (
  left: readonly Point3[],
  right: readonly Point3[],
  { corners = [], tolerance = FIT }: MirroredWish = {},
): Development => {
  if (!(left.length > 1 && left.length === right.length))
    throw new RangeError('rails that mirror each other have equal counts, of two or more');
  const middles = left.map((p, i) => between3(p, right[i]!, 0.5));
  const steps = middles.slice(1).flatMap((): Side[] => ['left', 'right']);
  const rises = smoothSteps({ left: middles, right, steps }).left;
  let up = 0;
  const half = middles.map((middle, i): Point => {
    const ruling = subtract3(right[i]!, left[i]!);
    if (i > 0) {
      const step = subtract3(middle, middles[i - 1]!);
      if (!(Math.abs(dot3(ruling, step)) <= SQUARE * norm3(ruling) * norm3(step) + SAME_POINT))
        throw new RangeError('these rails do not mirror each other');
      up += rises[i - 1]!;
    }
    const width = distance3(left[i]!, right[i]!);
    return point(width > SAME_POINT ? width / 2 : 0, up);
  });
  const edge = fitEdge(half, { corners, tolerance });
  return {
    left: reversed(mirrored(edge)),
    right: edge,
    flat: { left: half.map(({ x, y }) => point(0 - x, y)), right: half },
  };
};

/** Cosine of the angle that a ruling may lie from square to the mirror: what rounding leaves is far less. */
const SQUARE = 1e-6;
