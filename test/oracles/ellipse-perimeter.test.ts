import ellipe from '@stdlib/math-base-special-ellipe';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ovalGirth, ovalOfGirth } from '../../src/geometry/oval.ts';

/**
 * Complete elliptic integral of the second kind E(m): Abramowitz and Stegun, Handbook of Mathematical Functions,
 * table 17.1; nine decimals.
 */
const SECOND_KIND = [
  [0, 1.570796327],
  [0.1, 1.530757637],
  [0.2, 1.489035058],
  [0.3, 1.445363064],
  [0.4, 1.399392139],
  [0.5, 1.350643881],
  [0.6, 1.298428035],
  [0.7, 1.241670568],
  [0.8, 1.178489924],
  [0.9, 1.104774733],
] as const;

describe('the girth of an oval', () => {
  test.each(SECOND_KIND)('is 4a·E(m) with the handbook’s E(%d) = %d', (m, e) => {
    const halfBreadth = Math.sqrt(1 - m);
    expect(Math.abs(ovalGirth({ halfLength: 1, halfBreadth }) - 4 * e)).toBeLessThan(3e-9);
  });

  test('agrees with a general numerics library (stdlib’s ellipe) on any oval', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 50, max: 300, noNaN: true }),
        fc.double({ min: 0.3, max: 1, noNaN: true }),
        (a, k) => {
          const expected = 4 * a * ellipe(1 - k * k);
          expect(Math.abs(ovalGirth({ halfLength: a, halfBreadth: a * k }) - expected)).toBeLessThan(
            1e-9 * a,
          );
        },
      ),
    );
  });

  // M. A. McCormack and G. A. Martin give hat tips by axes; Martin, Make Your Own Hats, 1921, ch. I: 8 1/2 × 6 1/2 in
  // for a head of 24. The ellipse itself is 1.4 % less.
  test('of Martin’s tip of 8 1/2 by 6 1/2 inches is 23.667 in, not the 24 it is meant for', () => {
    expect(ovalGirth({ halfLength: 4.25, halfBreadth: 3.25 })).toBeCloseTo(23.667, 3);
  });

  // Martin, 1921, ch. IV: ovals whose length is 2 in more than their breadth.
  test.each([
    [24, 8.607, 6.607],
    [25, 8.926, 6.926],
  ])('of Martin’s oval for a girth of %d in gives axes of %d and %d', (girth, length, breadth) => {
    const oval = ovalOfGirth(girth, breadth / length);
    expect(2 * oval.halfLength).toBeCloseTo(length, 2);
    expect(2 * oval.halfBreadth).toBeCloseTo(breadth, 2);
  });
});
