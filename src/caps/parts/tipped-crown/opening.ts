import { type Oval, ovalOfGirth } from '../../../geometry/oval.ts';
import type { OvalParallel } from '../../../geometry/oval-parallel.ts';

/** A crown that stands straight up from its opening or narrows from there, at the same lean all round. */
export interface NarrowingCrown {
  /** The edge of the top. */
  readonly rim: Oval;
  /** The lower edge: the rim's parallel, of the finished girth. */
  readonly opening: OvalParallel;
}

/**
 * The crown over an opening of some girth (mm) and breadth by length, less round at the top by a taper (mm). Straight up
 * the opening is that very ellipse; with a taper it is the parallel of one, as long and as broad within a few tenths of a mm.
 */
export const narrowingCrown = (girth: number, ratio: number, taper: number): NarrowingCrown => {
  const { halfLength, halfBreadth } = ovalOfGirth(girth, ratio);
  const out = taper / (2 * Math.PI);
  const rim = ovalOfGirth(girth - taper, (halfBreadth - out) / (halfLength - out));
  return { rim, opening: { oval: rim, out } };
};
