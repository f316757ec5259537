import { reversedCurve } from '../../geometry/curve.ts';
import { point } from '../../geometry/point.ts';
import { openingOf } from '../opening.ts';
import { type OpeningCurve, openingCurve } from '../parts/top-and-sides/opening-curve.ts';
import { bend, fullest, tuckedIn } from '../parts/top-and-sides/profile.ts';
import {
  type ProfilePart,
  type TopAndSidesShape,
  topAndSidesShape,
} from '../parts/top-and-sides/top-and-sides-shape.ts';
import type { Head } from '../style.ts';
import type { ScrubValues } from './parameters.ts';

/** The opening of a scrub cap: straight across the ends of its strip, along the head's oval at the sides. */
export const scrubOpening = (values: ScrubValues, head: Head): OpeningCurve =>
  openingCurve({
    girth: openingOf(head, values.ease).shell,
    ratio: head.ratio,
    frontWidth: values.stripWidth,
    backWidth: values.stripWidth,
    roundFront: false,
  });

/** The highest place stands at this share of the opening's length from the back. */
const PEAK = 0.47;

/** Over the edge the strip stands out at brow and back by this share of what its straight ends cut off the oval. */
const FULLNESS = 0.45;

export const scrubProfile = (
  crownHeight: number,
  { front, back, oval }: OpeningCurve,
): readonly ProfilePart[] => {
  const [edgeFront, edgeBack] = [point(front.y, 0), point(back.y, 0)];
  const brow = fullest(edgeFront, FULLNESS * (oval.halfLength - front.y), crownHeight);
  const rump = fullest(edgeBack, -FULLNESS * (oval.halfLength + back.y), crownHeight);
  const peak = point(back.y + (front.y - back.y) * PEAK, crownHeight);
  return [
    { curve: reversedCurve(tuckedIn(brow, edgeFront)), steps: 18 },
    { curve: bend(brow, 'upright', peak, 0.5, 0.55), steps: 48 },
    { curve: bend(peak, 'level', rump, 0.55, 0.5), steps: 48 },
    { curve: tuckedIn(rump, edgeBack), steps: 18 },
  ];
};

export const scrubShape = (values: ScrubValues, opening: OpeningCurve): TopAndSidesShape =>
  topAndSidesShape({
    opening,
    profile: scrubProfile(values.crownHeight, opening),
    halfWidth: () => values.stripWidth / 2,
  });
