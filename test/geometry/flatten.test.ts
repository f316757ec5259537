import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { curveAt } from '../../src/geometry/curve.ts';
import { flatten } from '../../src/geometry/flatten.ts';
import { circle, line } from '../../src/geometry/path.ts';
import { distance, ORIGIN, point } from '../../src/geometry/point.ts';
import { toChord } from './deviation.ts';
import { anyCurve, anyShare } from './random-curves.ts';

describe('flattening', () => {
  test('leaves a straight line as it is', () => {
    expect(flatten([line(ORIGIN, point(100, 0))], 0.01)).toEqual([ORIGIN, point(100, 0)]);
  });

  test('keeps the chords of any curve within the tolerance', () => {
    const tolerance = fc.constantFrom(1, 0.1, 0.01);
    fc.assert(
      fc.property(anyCurve, tolerance, anyShare, (curve, within, t) => {
        const points = flatten([curve], within);
        const p = curveAt(curve, t);
        const off = Math.min(...points.slice(1).map((q, i) => toChord(p, points[i]!, q)));
        expect(off).toBeLessThanOrEqual(within * 1.0001);
      }),
    );
  });

  test('cuts a circle into no more chords than the tolerance asks for', () => {
    // Half the angle of a chord that bows by d has the cosine 1 - d / r.
    const points = flatten(circle(ORIGIN, 100), 0.1);
    expect(points).toHaveLength(Math.ceil(Math.PI / Math.acos(1 - 0.1 / 100)) + 1);
    expect(distance(points[0]!, points.at(-1)!)).toBe(0);
  });

  test('is refused without a tolerance', () => {
    expect(() => flatten(circle(ORIGIN, 1), 0)).toThrow(RangeError);
    expect(() => flatten(circle(ORIGIN, 1), Number.NaN)).toThrow(RangeError);
    expect(flatten([], 1)).toEqual([]);
  });
});
