import { pathLength, pointAt, stretch, tangentAt } from '../../../geometry/measure.ts';
import { cubic, type Path } from '../../../geometry/path.ts';
import { add, dot, left, scale, subtract } from '../../../geometry/point.ts';

export interface ArchWish {
  /** Along the lower edge from the centre back, mm: half of the whole opening. */
  readonly halfWidth: number;
  /** Up the centre back seam, mm. */
  readonly height: number;
}

/** A corner with half an arch cut out of it. */
export interface ArchCut {
  /** What is left of the seam, from its start to the top of the arch. */
  readonly seam: Path;
  /** From the top of the arch down to its foot: one cubic, square to the seam above and to the lower edge below. */
  readonly arch: Path;
  /** What is left of the lower edge, from the foot of the arch to its end. */
  readonly lower: Path;
}

/** Of a quarter circle, as of any quarter ellipse, this part of each half axis leads to its control point. */
const QUARTER = (4 / 3) * (Math.SQRT2 - 1);

/**
 * Half an arch cut out of the corner where a seam comes down to a lower edge, both walked counter-clockwise. On a straight
 * seam square to a straight edge it is a quarter of an ellipse, within 3 in 10,000 of its half axes.
 * Throws a RangeError where the arch is wider or higher than the edges it is cut from.
 */
export const archCut = (seam: Path, lower: Path, { halfWidth, height }: ArchWish): ArchCut => {
  const [up, along] = [pathLength(seam), pathLength(lower)];
  if (!(halfWidth > 0 && height > 0 && halfWidth < along && height < up))
    throw new RangeError('an arch must fit between the ends of the edges it is cut from');
  const [top, foot] = [pointAt(seam, up - height), pointAt(lower, halfWidth)];
  const [overTop, overFoot] = [left(tangentAt(seam, up - height)), left(tangentAt(lower, halfWidth))];
  const across = dot(subtract(foot, top), overTop);
  const rise = dot(subtract(top, foot), overFoot);
  return {
    seam: stretch(seam, 0, up - height),
    arch: [
      cubic(
        top,
        add(top, scale(overTop, across * QUARTER)),
        add(foot, scale(overFoot, rise * QUARTER)),
        foot,
      ),
    ],
    lower: stretch(lower, halfWidth, along),
  };
};
