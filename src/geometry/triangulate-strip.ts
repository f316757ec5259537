import { cheapestSteps } from './cheapest-steps.ts';
import { type Corridor, corridorAbout, wholeGrid } from './corridor.ts';
import { type Rail, railOf, thinned } from './rail.ts';
import type { Point3 } from './space.ts';
import { type StripMeasure, stripCosts } from './strip-costs.ts';
import type { Side, TriangleStrip } from './triangle-strip.ts';

export interface TriangulationWish {
  readonly measure?: StripMeasure;
  /**
   * Rulings are chosen twice: first among this many points a side at most, then among all points, but no further from
   * the first choice than to the next of those points. Infinity chooses once, among all.
   */
  readonly choice?: number;
  /**
   * Says that the strip is the mirror image of itself with each rail turned end to end (a band about the centre
   * front): the first half is triangulated and mirrored. Both rails need a middle point, that is an odd count. A
   * strip whose rails mirror each other, like a gore, needs no word: its quads are flat, whichever way they are
   * halved (see developMirrored).
   */
  readonly mirrored?: boolean;
}

const CHOICE = 32;

/**
 * The strip of triangles between two rails that is nearest to developable: of all the ways to go up both rails point
 * by point, the one that makes the measure least (see cheapestSteps for the rule, StripMeasure for what is measured).
 */
export const triangulateStrip = (
  left: readonly Point3[],
  right: readonly Point3[],
  { measure = 'twist', choice = CHOICE, mirrored = false }: TriangulationWish = {},
): TriangleStrip => {
  if (!(choice >= 2)) throw new RangeError('rulings are chosen among two points a side or more');
  if (!mirrored)
    return { left, right, steps: named(bestSteps(railOf(left), railOf(right), measure, choice)) };
  if (!(left.length % 2 === 1 && right.length % 2 === 1))
    throw new RangeError('a strip that mirrors itself needs an odd count of points on either rail');
  const [halfLeft, halfRight] = [firstHalf(railOf(left)), firstHalf(railOf(right))];
  const half = bestSteps(halfLeft, halfRight, measure, choice);
  return { left, right, steps: named([...half, ...half.slice().reverse()]) };
};

const named = (steps: Iterable<number>): Side[] =>
  Array.from(steps, (step) => (step === 0 ? 'left' : 'right'));

const firstHalf = (rail: Rail): Rail =>
  thinned(
    rail,
    Array.from({ length: (rail.count + 1) / 2 }, (_, i) => i),
  );

const bestSteps = (left: Rail, right: Rail, measure: StripMeasure, choice: number): Uint8Array => {
  const among = (corridor: Corridor, a: Rail, b: Rail) =>
    cheapestSteps(b.count, corridor, stripCosts(measure, a, b, corridor));
  const [lefts, rights] = [chosenPlaces(left, choice), chosenPlaces(right, choice)];
  const [some, others] = [thinned(left, lefts), thinned(right, rights)];
  const steps = among(wholeGrid(some.count, others.count), some, others);
  const all = some.count === left.count && others.count === right.count;
  return all ? steps : among(corridorAbout(steps, lefts, rights), left, right);
};

/** Places spread evenly over a rail, both ends and every corner among them. */
const chosenPlaces = ({ count, corner }: Rail, choice: number): readonly number[] => {
  const chosen = Uint8Array.from(corner);
  const some = Math.min(count, choice);
  for (let k = 0; k < some; k++) chosen[some === 1 ? 0 : Math.round(((count - 1) * k) / (some - 1))] = 1;
  return Array.from({ length: count }, (_, i) => i).filter((i) => chosen[i] === 1);
};
