import { type Opening, openingOf } from '../opening.ts';
import type { ArchWish } from '../parts/back-opening/arch-cut.ts';
import { roomOf } from '../parts/back-strap/back-strap.ts';
import { goreLength } from '../parts/gore/gore-length.ts';
import type { Head } from '../style.ts';
import type { BallValues } from './parameters.ts';
import type { BallCrownWish } from './profile.ts';

/** The girths and lengths that a ball cap is drawn from, mm. */
export interface BallMeasures {
  /** At the lower edge, drawn in to fit. */
  readonly girths: Opening;
  readonly wish: BallCrownWish;
  readonly opening: ArchWish;
}

export const ballMeasures = (values: BallValues, head: Head): BallMeasures => {
  const girths = openingOf(head, values.ease);
  return {
    girths,
    wish: {
      girth: girths.shell + roomOf(values),
      length: goreLength(values.crownRoom, head, 0),
      widest: values.goreWidest,
      steepness: values.frontSteepness,
    },
    opening: { halfWidth: values.openingWidth / 2, height: values.openingHeight },
  };
};
