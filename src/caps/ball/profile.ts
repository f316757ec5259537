import { norm, point } from '../../geometry/point.ts';
import { goreRail } from '../parts/gore/gore-rail.ts';
import { goreReach } from '../parts/gore/gore-reach.ts';

export const GORES = 6;
const SIXTH = Math.PI / 3;

/** What the crown is drawn from, mm; steepness is a part of one. */
export interface BallCrownWish {
  /** Round the lower edge as it is cut, across the opening. */
  readonly girth: number;
  /** From the lower edge up the middle of a back gore to the middle of the crown. */
  readonly length: number;
  /** Where the crown begins to turn in, as a part of the length. */
  readonly widest: number;
  /** How much further out than the rest the front stands near the top. */
  readonly steepness: number;
}

/** The crown at one level, mm. */
export interface BallStop {
  /** Above the lower edge. */
  readonly height: number;
  /** From the axis to the middle of a back, side and front gore. */
  readonly reach: OfGores;
  /** The way there from the lower edge, up the middle of a back, side and front gore. */
  readonly way: OfGores;
}

export interface OfGores {
  readonly back: number;
  readonly side: number;
  readonly front: number;
}

/** The crown of a close gored cap, as the back gores have it. */
export const backReach = ({ girth, length, widest }: BallCrownWish) =>
  goreReach({ gores: GORES, girth, length, fullness: 0, widest });

/**
 * The crown level by level, from its edge to its middle: a hexagon on every level, regular at the edge, whose two front sides stay
 * farther out on the way up, and the two at the sides half as much. Up to the second stop it is upright. Every gore is a part of a
 * cylinder with level rulings, and all lie flat in the middle, whatever the steepness.
 */
export const ballProfile = (wish: BallCrownWish): readonly BallStop[] => {
  const up = wish.length * wish.widest;
  const stops: BallStop[] = [];
  for (const { reach: back, height } of goreRail(backReach(wish))) {
    const last = stops.at(-1);
    const on = (gore: keyof OfGores, reach: number): number =>
      last ? last.way[gore] + norm(point(reach - last.reach[gore], height - last.height)) : 0;
    const way = on('back', back);
    const out = wish.steepness * smooth(Math.max(0, (way - up) / (wish.length - up)));
    const [side, front] = [back * (1 + out / 2), back * (1 + out)];
    stops.push({
      height,
      reach: { back, side, front },
      way: { back: way, side: on('side', side), front: on('front', front) },
    });
  }
  return stops;
};

/** From 0 to 1 with level ends. */
const smooth = (t: number): number => t * t * (3 - 2 * t);

/** Between the middles of two neighbours whose distances from the axis are given: from the first middle to their seam, mm. */
export const toSeam = (own: number, neighbour: number): number =>
  (neighbour - own * Math.cos(SIXTH)) / Math.sin(SIXTH);
