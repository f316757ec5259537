import { type Oval, ovalArc, ovalGirth, ovalPoint } from '../../../geometry/oval.ts';
import type { Point } from '../../../geometry/point.ts';
import { SAME_POINT } from '../../../geometry/tolerance.ts';

export interface OpeningCurveWish {
  /** All the way round, mm. */
  readonly girth: number;
  /** Breadth over length of the oval that the sides follow. */
  readonly ratio: number;
  /** Between the two seams at the front and at the back, straight across, mm. Below the breadth of the oval. */
  readonly frontWidth: number;
  readonly backWidth: number;
  /** The front follows the oval too; otherwise it goes straight across, as the back does. */
  readonly roundFront: boolean;
}

/**
 * The opening of a cap with a top and two sides, level: an oval, flattened straight across between the seams at the back, and
 * at the front unless it is round there. A soft opening takes the head's shape by itself: its girth is what counts.
 */
export interface OpeningCurve {
  readonly oval: Oval;
  /** Parameter angles of the oval where the wearer's right seam meets the edge, in (−π/2, 0) and (0, π/2). */
  readonly backAngle: number;
  readonly frontAngle: number;
  /** The same places, mm. */
  readonly back: Point;
  readonly front: Point;
  /** Lengths of the edge, mm: between the seams at the front and the back, and along one side. */
  readonly frontLength: number;
  readonly backLength: number;
  readonly sideLength: number;
  readonly roundFront: boolean;
}

/** The opening of exactly this girth. */
export const openingCurve = (wish: OpeningCurveWish): OpeningCurve => {
  const { girth, ratio } = wish;
  // Flattening takes a little off an oval's girth: a larger one makes up for it.
  const round = ovalGirth({ halfLength: 1, halfBreadth: ratio });
  let opening = curveOn(girth / round, wish);
  for (let tries = 0; tries < MOST_TRIES && Math.abs(girthOf(opening) - girth) > SAME_POINT; tries++) {
    const missing = girth - girthOf(opening);
    opening = curveOn(opening.oval.halfLength + missing / round, wish);
  }
  return opening;
};

/** Each try leaves a small part of what was missing. */
const MOST_TRIES = 40;

const girthOf = ({ frontLength, backLength, sideLength }: OpeningCurve): number =>
  frontLength + backLength + 2 * sideLength;

const curveOn = (halfLength: number, wish: OpeningCurveWish): OpeningCurve => {
  const { ratio, frontWidth, backWidth, roundFront } = wish;
  const oval = { halfLength, halfBreadth: halfLength * ratio };
  const angle = (width: number) => Math.acos(Math.min(1, width / 2 / oval.halfBreadth));
  const [frontAngle, backAngle] = [angle(frontWidth), -angle(backWidth)];
  return {
    oval,
    backAngle,
    frontAngle,
    back: ovalPoint(oval, backAngle),
    front: ovalPoint(oval, frontAngle),
    frontLength: roundFront ? ovalArc(oval, frontAngle, Math.PI - frontAngle) : frontWidth,
    backLength: backWidth,
    sideLength: ovalArc(oval, backAngle, frontAngle),
    roundFront,
  };
};

/** How far forward of its ends the front edge reaches, mm: 0 where it goes straight across. */
export const frontBow = ({ roundFront, oval, front }: OpeningCurve): number =>
  roundFront ? oval.halfLength - front.y : 0;
