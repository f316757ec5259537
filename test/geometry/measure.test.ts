import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  curveLength,
  pathLength,
  pointAt,
  reversed,
  stretch,
  tangentAt,
} from '../../src/geometry/measure.ts';
import { arc, circle, cubic, line, pathEnd, pathStart, polygon } from '../../src/geometry/path.ts';
import { norm, ORIGIN, point } from '../../src/geometry/point.ts';
import { expectNear, expectSamePoint } from './near.ts';
import { anyCurve, anyShare } from './random-curves.ts';

describe('lengths', () => {
  test('a line is as long as its ends are apart', () => {
    expect(curveLength(line(point(1, 2), point(4, 6)))).toBe(5);
  });

  test('an arc is radius times angle, whichever way it turns', () => {
    expectNear(curveLength(arc(ORIGIN, point(105, 0), -0.8)), 84, 1e-12);
    expectNear(pathLength(circle(point(7, -3), 105)), 2 * Math.PI * 105, 1e-12);
  });

  // Schoolbook calculus: the parabola y = x² from 0 to 1 is (2 √5 + arsinh 2) / 4 long.
  test('a cubic that is a parabola has the length of the parabola', () => {
    const parabola = cubic(ORIGIN, point(100 / 3, 0), point(200 / 3, 100 / 3), point(100, 100));
    expectNear(curveLength(parabola), (100 * (2 * Math.sqrt(5) + Math.asinh(2))) / 4, 1e-7);
  });

  // Neile's parabola (t², t³), the first curve whose length was found: (13 √13 - 8) / 27 from 0 to 1.
  test('a cubic with a cusp in its middle has the length of both its branches', () => {
    const neile = cubic(point(100, -100), point(-100 / 3, 100), point(-100 / 3, -100), point(100, 100));
    expectNear(curveLength(neile), (200 * (13 * Math.sqrt(13) - 8)) / 27, 1e-6);
  });

  test('a curve drawn on one point has none', () => {
    expect(curveLength(cubic(ORIGIN, ORIGIN, ORIGIN, ORIGIN))).toBe(0);
    expect(pathLength([])).toBe(0);
  });
});

describe('points along a path', () => {
  const square = polygon([ORIGIN, point(10, 0), point(10, 10), point(0, 10)]);

  test('lie where a tape would put them', () => {
    expectSamePoint(pointAt(square, 13), point(10, 3));
    expectSamePoint(pointAt(circle(ORIGIN, 10), 5 * Math.PI), point(0, 10));
  });

  test('stay on the ends beyond them', () => {
    expect(pointAt(square.slice(0, 2), 99)).toEqual(point(10, 10));
    expect(pointAt(square, -1)).toEqual(ORIGIN);
  });

  test('have unit tangents, at a corner that of the curve which follows', () => {
    expectSamePoint(tangentAt(square, 10), point(0, 1));
    expectSamePoint(tangentAt(square, 9.9), point(1, 0));
    expectSamePoint(tangentAt(circle(ORIGIN, 10), 5 * Math.PI), point(-1, 0));
    expectSamePoint(tangentAt(reversed(circle(ORIGIN, 10)), 0), point(0, -1));
  });

  test('have a tangent where a cubic begins standing still', () => {
    const still = cubic(ORIGIN, ORIGIN, point(3, 4), point(10, 4));
    expectSamePoint(tangentAt([still], 0), point(0.6, 0.8));
    expectSamePoint(tangentAt(reversed([still]), 1000), point(-0.6, -0.8));
  });

  test('are refused at a distance that is no number, or on no path', () => {
    expect(() => pointAt(square, Number.NaN)).toThrow(RangeError);
    expect(() => tangentAt([], 0)).toThrow(RangeError);
  });
});

describe('a stretch of a path', () => {
  test('is as long as asked for, of the same kind, and begins and ends on the path', () => {
    fc.assert(
      fc.property(anyCurve, anyShare, anyShare, (curve, a, b) => {
        const length = curveLength(curve);
        const [from, to] = [Math.min(a, b) * length, Math.max(a, b) * length];
        const part = stretch([curve], from, to);
        expectNear(pathLength(part), to - from, 1e-6);
        expectSamePoint(pathStart(part), pointAt([curve], from), 1e-9);
        expectSamePoint(pathEnd(part), pointAt([curve], to), 1e-9);
        if (to - from > 1e-6) expect(part.map(({ kind }) => kind)).toEqual([curve.kind]);
        if (to - from > 1) {
          expectSamePoint(pointAt(part, (to - from) / 3), pointAt([curve], from + (to - from) / 3), 1e-6);
        }
      }),
    );
  });

  test('runs over joints, keeps whole curves as they are, and comes back when asked for backwards', () => {
    const path = [
      line(ORIGIN, point(10, 0)),
      arc(point(10, 5), point(10, 0), Math.PI),
      line(point(10, 10), ORIGIN),
    ];
    const part = stretch(path, 4, 10 + 5 * Math.PI + 1);
    expect(part).toHaveLength(3);
    expect(part[1]).toBe(path[1]);
    expect(stretch(path, 10 + 5 * Math.PI + 1, 4)).toEqual(reversed(part));
  });

  test('of no length is a line without length', () => {
    const [only, ...more] = stretch([line(ORIGIN, point(10, 0))], 3, 3);
    expect(more).toEqual([]);
    expect(only).toEqual(line(point(3, 0), point(3, 0)));
  });
});

describe('a path reversed', () => {
  test('is as long, and passes the same points from the other end', () => {
    fc.assert(
      fc.property(anyCurve, anyShare, (curve, share) => {
        const length = curveLength(curve);
        const back = reversed([curve]);
        expectNear(pathLength(back), length, 2e-7);
        expectSamePoint(pointAt(back, share * length), pointAt([curve], (1 - share) * length), 1e-6);
        const tangent = tangentAt(back, share * length);
        expectNear(norm(tangent), 1, 1e-12);
      }),
    );
  });
});
