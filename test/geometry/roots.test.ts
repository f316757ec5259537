import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bernsteinRoots } from '../../src/geometry/roots.ts';
import { expectNear } from './near.ts';

/** Bernstein coefficients of the product of (t - root): each factor raises the degree by one. */
const fromRoots = (roots: readonly number[]): number[] =>
  roots.reduce(
    (b, root) => {
      const n = b.length;
      return Array.from({ length: n + 1 }, (_, i) => {
        const [left, right] = [i < n ? b[i]! * (n - i) * -root : 0, i > 0 ? b[i - 1]! * i * (1 - root) : 0];
        return (left + right) / n;
      });
    },
    [1],
  );

describe('roots of a polynomial between 0 and 1', () => {
  test('are those it was made from, to degree 6', () => {
    const root = fc.integer({ min: -30, max: 130 }).map((n) => n / 100 + 0.001);
    fc.assert(
      fc.property(fc.uniqueArray(root, { minLength: 1, maxLength: 6 }), (roots) => {
        const inside = roots.filter((r) => r > 0 && r < 1).sort((p, q) => p - q);
        const found = bernsteinRoots(fromRoots(roots));
        expect(found).toHaveLength(inside.length);
        found.forEach((r, i) => {
          // Six roots a hundredth apart leave few digits.
          expectNear(r, inside[i]!, 1e-4);
        });
      }),
      { numRuns: 500 },
    );
  });

  test('count a touch once, and an end that is touched as that end', () => {
    const [touch, ...more] = bernsteinRoots(fromRoots([0.3, 0.3]), 1e-9);
    expect(more).toEqual([]);
    expectNear(touch!, 0.3, 1e-6);
    expect(bernsteinRoots([1e-10, 1, 2], 1e-9)).toEqual([0]);
  });

  test('are both ends where it is nought throughout, and none where it keeps to one side', () => {
    expect(bernsteinRoots([0, 0, 0, 0], 1e-9)).toEqual([0, 1]);
    expect(bernsteinRoots([1, 0.1, 0.1, 1])).toEqual([]);
    expect(bernsteinRoots([Number.NaN, 1])).toEqual([]);
  });
});
