import { cubic } from '../../geometry/path.ts';
import { add, type Point, point, scale, subtract } from '../../geometry/point.ts';
import { type GoreReach, reachOfGirth } from '../parts/gore/gore-reach.ts';
import type { BeretMeasures } from './measures.ts';

/** The gores turn over the edge within this much cloth on either side of it: a part of the spread, and no more than so many mm. */
const [TURN, MOST_TURN] = [0.35, 20];
/** How near the turn keeps to the two straight ways that it joins: 1 would be a crease. */
const TIGHT = 0.75;

/**
 * A gore of a tam: out from the band at the slope of an under ring, over a rounded edge, and level in to the middle. Along the
 * cloth the middle of the gore leaves the axis by the cosine of its slope, stands still at the edge and comes in as fast as it goes.
 */
export const tamReach = (
  { openingGirth, rimGirth, slope }: Pick<BeretMeasures, 'openingGirth' | 'rimGirth' | 'slope'>,
  gores: number,
): GoreReach => {
  const [from, out] = [reachOfGirth(openingGirth, gores), reachOfGirth(rimGirth, gores)];
  const turn = Math.min(MOST_TURN, TURN * (out - from));
  // Where the straight ways would meet the upright at the edge.
  const under = point(out, (out - from) / Math.cos(slope));
  const edge = point(out, under.y + turn);
  const over = point(out, edge.y + turn);
  const middle = point(0, over.y + out);
  return [rounded(point(from, 0), under, edge), rounded(edge, over, middle)];
};

/** The curve from a to b, along the ways from either to a corner. */
const rounded = (a: Point, corner: Point, b: Point) =>
  cubic(a, add(a, scale(subtract(corner, a), TIGHT)), add(b, scale(subtract(corner, b), TIGHT)), b);
