import type { ArchWish } from '../parts/back-opening/arch-cut.ts';
import { roomOf } from '../parts/back-strap/back-strap.ts';
import { goreLength } from '../parts/gore/gore-length.ts';
import type { Head } from '../style.ts';
import type { BallValues } from './parameters.ts';
import type { BallCrownWish } from './profile.ts';

/** The girths and lengths that a ball cap is drawn from, mm. */
export interface BallMeasures {
  readonly finishedGirth: number;
  readonly wish: BallCrownWish;
  readonly opening: ArchWish;
}

export const ballMeasures = (values: BallValues, head: Head): BallMeasures => {
  const finishedGirth = head.girth + values.ease;
  return {
    finishedGirth,
    wish: {
      girth: finishedGirth + roomOf(values),
      length: goreLength(values.crownRoom, head, 0),
      widest: values.goreWidest,
      steepness: values.frontSteepness,
    },
    opening: { halfWidth: values.openingWidth / 2, height: values.openingHeight },
  };
};
