import { fitPath } from '../../geometry/fit.ts';
import { reversed } from '../../geometry/measure.ts';
import { line, type Path, pathEnd, pathStart } from '../../geometry/path.ts';
import { type Point, point } from '../../geometry/point.ts';
import { type ArchCut, type ArchWish, archCut } from '../parts/back-opening/arch-cut.ts';
import { type GoreShape, goreShape } from '../parts/gore/gore.ts';
import {
  type BallCrownWish,
  type BallStop,
  backReach,
  ballProfile,
  GORES,
  type OfGores,
  toSeam,
} from './profile.ts';

/** The wearer's right half of the crown, each gore flat on y = 0 with its middle on x = 0. */
export interface BallCrownShape {
  readonly stops: readonly BallStop[];
  readonly front: GoreShape;
  readonly side: GoreShape;
  /** As it would be without an opening, and what the arch leaves of it. */
  readonly wholeBack: GoreShape;
  readonly back: ArchCut & { readonly right: Path };
}

/**
 * The three gores. The edge at the centre back is exact; the others are fitted, to FIT, through points that both sides of a seam
 * share.
 */
export const ballCrownShape = (wish: BallCrownWish, opening: ArchWish): BallCrownShape => {
  const stops = ballProfile(wish);
  const exact = goreShape(backReach(wish), GORES);
  const edge = (gore: keyof OfGores, to: keyof OfGores, side: 1 | -1) =>
    edgeUp(stops.map(({ reach, way }) => point(side * toSeam(reach[gore], reach[to]), way[gore])));
  const wholeBack = between(reversed(exact.left), edge('back', 'side', 1));
  return {
    stops,
    front: between(edge('front', 'side', -1), edge('front', 'front', 1)),
    side: between(edge('side', 'back', -1), edge('side', 'front', 1)),
    wholeBack,
    back: { ...archCut(wholeBack.left, wholeBack.bottom, opening), right: wholeBack.right },
  };
};

/** Upright to the second point, smooth from there to the tip. */
const edgeUp = ([foot, ...turn]: readonly Point[]): Path => [
  line(foot!, turn[0]!),
  ...fitPath(turn, { start: point(0, 1) }),
];

/** The gore between two edges that both go up to its tip. */
const between = (left: Path, right: Path): GoreShape => {
  const [from, to] = [pathStart(left), pathStart(right)];
  const tip = pathEnd(right);
  const down = reversed(left);
  return {
    bottom: [line(from, to)],
    right,
    // Both edges end on the axis: the same point, to rounding.
    left: [{ ...down[0]!, from: tip }, ...down.slice(1)],
  };
};
