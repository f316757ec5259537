import { type Opening, openingOf } from '../opening.ts';
import { frontBow, type OpeningCurve, openingCurve } from '../parts/top-and-sides/opening-curve.ts';
import {
  type ProfilePart,
  type TopAndSidesShape,
  topAndSidesShape,
} from '../parts/top-and-sides/top-and-sides-shape.ts';
import type { Head } from '../style.ts';
import type { ThreePieceValues } from './parameters.ts';
import { capProfile } from './profile.ts';

/** The opening of a three-piece flat cap: the head's oval, flattened a little at the back between the seams. */
export const capOpening = (values: ThreePieceValues, head: Head): OpeningCurve =>
  layerOpening(values, head, openingOf(head, values.ease).shell);

/** The lining's: smaller all over by as much as it lies inside the shell. */
export const liningOpening = (values: ThreePieceValues, head: Head): OpeningCurve =>
  layerOpening(values, head, openingOf(head, values.ease).lining);

const layerOpening = (values: ThreePieceValues, head: Head, girth: number): OpeningCurve => {
  const share = girth / openingOf(head, values.ease).shell;
  return openingCurve({
    girth,
    ratio: head.ratio,
    frontWidth: values.topFrontWidth * share,
    backWidth: values.topBackWidth * share,
    roundFront: true,
  });
};

type CrownWish = Pick<
  ThreePieceValues,
  'crownHeight' | 'topWidth' | 'overhang' | 'backFullness' | 'topWidest'
>;

/** The lining's: as much smaller in height and width as it is to be, and as the cloth between it and the shell makes it. */
export const liningWish = (values: ThreePieceValues, girths: Opening): CrownWish => ({
  ...values,
  crownHeight: values.crownHeight - between(girths) - values.liningTake,
  topWidth: values.topWidth - 2 * between(girths) - values.liningTake,
});

/** From the middle of the lining to that of the shell, mm. */
export const between = ({ shell, lining }: Opening): number => (shell - lining) / (2 * Math.PI);

export const profileOf = (wish: CrownWish, { front, back, oval }: OpeningCurve): readonly ProfilePart[] =>
  capProfile({
    seamFront: front.y,
    edgeFront: oval.halfLength,
    edgeBack: back.y,
    height: wish.crownHeight,
    overhang: wish.overhang,
    backFullness: wish.backFullness,
  });

export const crownShape = (wish: CrownWish, opening: OpeningCurve): TopAndSidesShape =>
  topAndSidesShape({
    opening,
    profile: profileOf(wish, opening),
    halfWidth: (along, length) => {
      const bow = frontBow(opening);
      const widest = bow + wish.topWidest * (length - bow);
      const [half, front, back] = [wish.topWidth / 2, opening.front.x, opening.back.x];
      return along < widest
        ? front + (half - front) * neck(along / widest)
        : back + (half - back) * round((length - along) / (length - widest));
    },
  });

/** How the top grows from its end (0) to its widest place (1): roundly behind; in front, like the neck of a bottle. */
const round = (t: number): number => t * (2 - t);
const neck = (t: number): number => (1 - NECK) * round(t) + NECK * t * t * (3 - 2 * t);
/** How slender the neck is, from not at all (0) to parallel where it begins (1). */
const NECK = 0.6;
