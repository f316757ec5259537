import { curveLength } from '../../../geometry/measure.ts';
import { ovalOfGirth } from '../../../geometry/oval.ts';
import type { Problem } from '../../../pattern/problem.ts';
import { mm, words } from '../../../words.ts';
import type { Head } from '../../style.ts';
import { fieldOf } from '../../validate.ts';
import { frontBow, type OpeningCurve } from './opening-curve.ts';
import { crownHeightParameter } from './parameters.ts';
import type { ProfilePart } from './top-and-sides-shape.ts';

/** An end of a top wider than a share of the opening's breadth: its sides would have no way left round the head. */
export const endTooWide = (key: string, width: number, most: number, opening: Head): readonly Problem[] => {
  const limit = most * 2 * ovalOfGirth(opening.girth, opening.ratio).halfBreadth;
  if (width <= limit) return [];
  const nearest = Math.floor(limit);
  return [
    {
      field: fieldOf(key),
      message: words`The opening is too narrow for that on this head: ${mm(nearest)} at most.`,
      nearest,
    },
  ];
};

interface Reach {
  readonly crownHeight: number;
  /** Widest place of the top, mm. */
  readonly topWidth: number;
  readonly opening: OpeningCurve;
  readonly profileOf: (crownHeight: number) => readonly ProfilePart[];
}

/** From the front ends of the seams to the back, along the cloth, mm. */
const profileLength = (profile: readonly ProfilePart[]): number =>
  profile.reduce((sum, { curve }) => sum + curveLength(curve), 0);

/** How far the cloth goes over the head from edge to edge, mm: front to back or from side to side, the less of the two. */
const reachAt = (crownHeight: number, { topWidth, opening, profileOf }: Reach): number => {
  const half = topWidth / 2;
  const across = 2 * (half + Math.hypot(crownHeight, half - opening.oval.halfBreadth));
  return Math.min(profileLength(profileOf(crownHeight)) - frontBow(opening), across);
};

/** A crown that the head would push up off the brow; or a way over the head longer than any crown reaches. */
export const crownTooLow = (wish: Reach, arc: number): readonly Problem[] => {
  const reach = reachAt(wish.crownHeight, wish);
  if (reach >= arc) return [];
  const { max, step } = crownHeightParameter([0, 0], 0);
  const steps = Math.ceil((max - wish.crownHeight) / step);
  const heights = Array.from({ length: steps }, (_, i) => max - (steps - 1 - i) * step);
  const nearest = heights.find((height) => reachAt(height, wish) >= arc);
  if (nearest === undefined) return [arcTooLong(reachAt(max, wish), arc)];
  return [
    {
      field: fieldOf('crownHeight'),
      message: words`Over the top from edge to edge this cap is ${mm(reach)}, the head ${mm(arc)}. A higher crown reaches over it.`,
      nearest,
    },
  ];
};

const arcTooLong = (most: number, arc: number): Problem => ({
  field: 'head.arc',
  message: words`Over the head from edge to edge it is ${mm(arc)}: the highest crown of this cap reaches ${mm(most)}. Measure again from where the cap’s edge lies on the brow to where it lies behind.`,
  nearest: Math.floor(most),
});
