import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boundsOf } from '../../src/geometry/bounds.ts';
import { flatten } from '../../src/geometry/flatten.ts';
import { arc, circle, line } from '../../src/geometry/path.ts';
import { ORIGIN, point } from '../../src/geometry/point.ts';
import { expectNear, expectSamePoint } from './near.ts';
import { anyCurve } from './random-curves.ts';

describe('bounds', () => {
  test('of a circle are the square around it', () => {
    expect(boundsOf(circle(point(3, 4), 5))).toEqual({ min: point(-2, -1), max: point(8, 9) });
  });

  test('of an arc take in only the quarters it passes, either way round', () => {
    const start = point(10 * Math.cos(0.5), 10 * Math.sin(0.5));
    const up = boundsOf([arc(ORIGIN, start, 2)]);
    expectSamePoint(up.max, point(start.x, 10));
    expectSamePoint(up.min, point(10 * Math.cos(2.5), start.y));
    const down = boundsOf([arc(ORIGIN, start, -1)]);
    expectSamePoint(down.max, point(10, start.y));
    expectSamePoint(down.min, point(10 * Math.cos(0.5), -10 * Math.sin(0.5)));
  });

  test('touch every curve on all four sides: no looser and no tighter than a fine polygon on it', () => {
    fc.assert(
      fc.property(anyCurve, (curve) => {
        const { min, max } = boundsOf([curve]);
        const points = flatten([curve], 1e-3);
        const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
        expectNear(min.x, Math.min(...xs), 1.1e-3);
        expectNear(max.x, Math.max(...xs), 1.1e-3);
        expectNear(min.y, Math.min(...ys), 1.1e-3);
        expectNear(max.y, Math.max(...ys), 1.1e-3);
        expect(min.x).toBeLessThanOrEqual(Math.min(...xs) + 1e-9);
        expect(max.y).toBeGreaterThanOrEqual(Math.max(...ys) - 1e-9);
      }),
      { numRuns: 200 },
    );
  });

  test('of several curves take in all of them', () => {
    const path = [line(point(0, 0), point(5, -7)), line(point(5, -7), point(20, 3))];
    expect(boundsOf(path)).toEqual({ min: point(0, -7), max: point(20, 3) });
  });
});
