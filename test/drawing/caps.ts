import fc from 'fast-check';
import { flatTop } from '../../src/caps/flat-top/flat-top.ts';
import { type FlatTopValues, flatTopParameters } from '../../src/caps/flat-top/parameters.ts';
import { defaultsOf } from '../../src/caps/parameter.ts';
import type { Pattern } from '../../src/pattern/pattern.ts';

export const HEAD = { girth: 546.1, ratio: 0.8, arc: 307 };
export const defaults: FlatTopValues = defaultsOf(flatTopParameters);

/** A flat-top cap with some wishes of its own. */
export const cap = (wishes: Partial<FlatTopValues> = {}, head = HEAD): Pattern =>
  flatTop.draft({ ...defaults, ...wishes }, head).pattern;

const mm = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Wishes all over the ranges of a flat-top cap, but for those that are given; what cannot be sewn with them is left out. */
export const wishesWith = (given: Partial<FlatTopValues> = {}): fc.Arbitrary<FlatTopValues> =>
  anywhere
    .map((some) => ({ ...defaults, ...some, ...given }))
    .filter((values) => flatTop.problems(values, HEAD).length === 0);

const anywhere = fc.record({
  ease: mm(0, 40),
  crownFullness: mm(0, 320),
  sideBandHeight: mm(30, 110),
  tipRatio: mm(0.72, 1),
  sideBandPieces: fc.constantFrom('2' as const, '4' as const),
  bandHeight: mm(20, 70),
  visorLength: mm(100, 280),
  visorDepth: mm(25, 100),
  visorDrop: mm(0, 1.2),
  visorFullness: mm(0, 1),
  strapWidth: mm(8, 30),
  lining: fc.boolean(),
  strap: fc.boolean(),
  allowance: mm(3, 20),
});
