import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { flatten } from '../../src/geometry/flatten.ts';
import { contains, isWithin, windingAround } from '../../src/geometry/inside.ts';
import { reversed } from '../../src/geometry/measure.ts';
import { arc, circle, line, polygon } from '../../src/geometry/path.ts';
import { cross, dot, ORIGIN, type Point, point, subtract } from '../../src/geometry/point.ts';
import { anyEdges, anyPoint } from './random-curves.ts';

/** How often a polygon turns around a point, by adding up the angles its sides subtend. */
const turnsAround = (points: readonly Point[], p: Point): number => {
  const angles = points.slice(1).map((q, i) => {
    const [a, b] = [subtract(points[i]!, p), subtract(q, p)];
    return Math.atan2(cross(a, b), dot(a, b));
  });
  return angles.reduce((sum, angle) => sum + angle, 0) / (2 * Math.PI);
};

describe('inside an outline', () => {
  test('a ring of points holds what the polygon through them holds', () => {
    const ring = [ORIGIN, point(10, 0), point(10, 8), point(5, 3), point(0, 8), ORIGIN];
    const path = polygon(ring.slice(1));
    const near = fc.integer({ min: -3, max: 12 });
    fc.assert(
      fc.property(near, near, (x, y) => {
        // Never on a side.
        const p = point(x + 0.5, y + 0.25);
        expect(isWithin(ring, p)).toBe(contains(path, p));
      }),
    );
    expect([point(5, 1), point(1, 6), point(9, 6)].map((p) => isWithin(ring, p))).toEqual([true, true, true]);
    expect(isWithin(ring, point(5, 5))).toBe(false);
  });

  test('a circle holds what is nearer to its centre than its radius', () => {
    const round = circle(point(2, 3), 10);
    fc.assert(
      fc.property(anyPoint, (p) => {
        const from = Math.hypot(p.x - 2, p.y - 3);
        fc.pre(Math.abs(from - 10) > 1e-6);
        expect(contains(round, p)).toBe(from < 10);
      }),
      { numRuns: 500 },
    );
  });

  test('points level with corners are told right', () => {
    const diamond = polygon([point(10, 0), point(0, 10), point(-10, 0), point(0, -10)]);
    expect(contains(diamond, ORIGIN)).toBe(true);
    expect(contains(diamond, point(-11, 0))).toBe(false);
    expect(contains(diamond, point(-5, 10))).toBe(false);
    const dome = [arc(ORIGIN, point(10, 0), Math.PI), line(point(-10, 0), point(10, 0))];
    expect(contains(dome, point(-20, 10))).toBe(false);
    expect(contains(dome, point(0, 9.999))).toBe(true);
    expect(contains(dome, point(-20, 0))).toBe(false);
  });

  test('the winding has the sign of the outline, and counts each turn', () => {
    const round = circle(ORIGIN, 10);
    expect(windingAround(round, point(1, 1))).toBe(1);
    expect(windingAround(reversed(round), point(1, 1))).toBe(-1);
    expect(windingAround([...round, ...round], point(1, 1))).toBe(2);
  });

  test('the winding around any point is the angle that a fine polygon subtends', () => {
    fc.assert(
      fc.property(anyEdges, anyPoint, (edges, p) => {
        const outline = edges.flat();
        const turns = turnsAround(flatten(outline, 1e-4), p);
        // On the outline itself the angle is no whole number of turns.
        fc.pre(Math.abs(turns - Math.round(turns)) < 1e-3);
        expect(windingAround(outline, p) - Math.round(turns)).toBe(0);
      }),
      { numRuns: 100 },
    );
  });
});
