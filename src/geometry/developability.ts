import { railOf } from './rail.ts';
import { rulingTwist } from './ruling-twist.ts';
import { distance3 } from './space.ts';
import { SAME_POINT } from './tolerance.ts';
import { type TriangleStrip, triangleAreas } from './triangle-strip.ts';

/**
 * How far the smooth ruled surface through a strip's rulings is from one that rolls out flat. On cones, cylinders and
 * tangent surfaces every angle is 0 and the area ratio 1, but for a part of the angle that a rail turns in one step.
 */
export interface Developability {
  /** Radians between the surface's normals at the two ends of a ruling: the mean by area, and the greatest. */
  readonly meanTwist: number;
  readonly greatestTwist: number;
  /**
   * Radians that the normal turns in a millimetre of ruling, the mean by area. On a smooth ruled surface it is about
   * the root of −K, K the Gaussian curvature midway along the ruling.
   */
  readonly twistPerMm: number;
  /**
   * Area of the flat piece over that of the smooth surface. Above 1: the edges have the right length, but between
   * them the cloth is too long and must be shrunk with steam, or the edges stretched.
   */
  readonly areaRatio: number;
}

export const developability = (strip: TriangleStrip): Developability => {
  const areas = triangleAreas(strip);
  const rulings = rulingsOf(strip);
  const shares = leftShares(strip, areas);
  let [area, smooth, turned, perMm, greatest] = [0, 0, 0, 0, 0];
  for (const [k, part] of areas.entries()) {
    const twist = calmest(rulings, k);
    const length = (rulings[k]!.length + rulings[k + 1]!.length) / 2;
    area += part;
    smooth += part * smoothShare(twist, shares[k]!);
    turned += part * twist;
    if (length > SAME_POINT) perMm += (part * twist) / length;
    greatest = Math.max(greatest, twist);
  }
  if (!(area > 0)) throw new RangeError('a strip without area has no surface to judge');
  return {
    meanTwist: turned / area,
    greatestTwist: greatest,
    twistPerMm: perMm / area,
    areaRatio: area / smooth,
  };
};

interface Ruling {
  /** mm. */
  readonly length: number;
  /** Radians, signed; NaN where the rails meet. */
  readonly twist: number;
}

const rulingsOf = ({ left, right, steps }: TriangleStrip): readonly Ruling[] => {
  const [leftRail, rightRail] = [railOf(left), railOf(right)];
  let [i, j] = [0, 0];
  const ruling = (): Ruling => {
    const length = distance3(left[i]!, right[j]!);
    return { length, twist: length > SAME_POINT ? rulingTwist(leftRail, rightRail, i, j) : Number.NaN };
  };
  const rulings = [ruling()];
  for (const side of steps) {
    if (side === 'left') i++;
    else j++;
    rulings.push(ruling());
  }
  return rulings;
};

/**
 * The least twist about a triangle, radians. Going up point by point, the rulings stand by turns a little before and
 * a little behind the surface's own: where they twist both ways, one between them does not twist.
 */
const calmest = (rulings: readonly Ruling[], k: number): number => {
  let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let at = Math.max(0, k - 1); at <= Math.min(k + 2, rulings.length - 1); at++) {
    const { twist } = rulings[at]!;
    if (twist < least) least = twist;
    if (twist > most) most = twist;
  }
  if (!(least <= most)) return 0;
  return least * most <= 0 ? 0 : Math.min(Math.abs(least), Math.abs(most));
};

/** Steps on either side of a triangle over which the areas swept on the left and on the right are compared. */
const NEARBY = 8;

/** What part of the area about each triangle is swept by steps on the left. */
const leftShares = ({ steps }: TriangleStrip, areas: readonly number[]): readonly number[] => {
  const all = [0];
  const lefts = [0];
  for (const [k, area] of areas.entries()) {
    all.push(all[k]! + area);
    lefts.push(lefts[k]! + (steps[k] === 'left' ? area : 0));
  }
  return areas.map((_, k) => {
    const [from, to] = [Math.max(0, k - NEARBY), Math.min(areas.length, k + NEARBY + 1)];
    const swept = all[to]! - all[from]!;
    return swept > 0 ? (lefts[to]! - lefts[from]!) / swept : 1;
  });
};

/**
 * Area of a narrow strip of a smooth ruled surface over that of its two triangles. At a share v of the ruling, the
 * surface's area is |(1 − v)·L + v·R|, with L and R the normals at the ends as long as the triangles are large, and
 * the twist between them. Simpson's rule in two parts: within 1e-4 up to a twist of a quarter turn.
 */
const smoothShare = (twist: number, leftShare: number): number => {
  const across = (v: number) => {
    const [a, b] = [2 * leftShare * (1 - v), 2 * (1 - leftShare) * v];
    return Math.sqrt(a * a + b * b + 2 * a * b * Math.cos(twist));
  };
  return (across(0) + 4 * across(0.25) + 2 * across(0.5) + 4 * across(0.75) + across(1)) / 12;
};
