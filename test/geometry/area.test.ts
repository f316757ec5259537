import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { areaOf } from '../../src/geometry/area.ts';
import { flatten } from '../../src/geometry/flatten.ts';
import { reversed } from '../../src/geometry/measure.ts';
import { arc, circle, cubic, line, polygon } from '../../src/geometry/path.ts';
import { ORIGIN, point } from '../../src/geometry/point.ts';
import { translated } from '../../src/geometry/transform.ts';
import { expectNear } from './near.ts';
import { anyEdges } from './random-curves.ts';

/** The surveyor's formula for straight-sided fields. */
const shoelace = (points: readonly { x: number; y: number }[]): number =>
  points.reduce((sum, p, i) => {
    const q = points[(i + 1) % points.length]!;
    return sum + (p.x * q.y - q.x * p.y) / 2;
  }, 0);

describe('areas', () => {
  test('are positive counter-clockwise and negative clockwise', () => {
    const triangle = polygon([ORIGIN, point(6, 0), point(0, 4)]);
    expect(areaOf(triangle)).toBe(12);
    expect(areaOf(reversed(triangle))).toBe(-12);
  });

  test('of a circle are exact wherever it lies', () => {
    expectNear(areaOf(circle(point(1e4, -1e4), 105)), Math.PI * 105 ** 2, 1e-6);
  });

  test('of a segment between an arc and its chord are r² (θ - sin θ) / 2', () => {
    const [r, angle] = [80, 1.2];
    const bow = arc(ORIGIN, point(r, 0), angle);
    expectNear(areaOf([bow, line(bow.to, bow.from)]), (r * r * (angle - Math.sin(angle))) / 2, 1e-9);
    expectNear(areaOf([bow]), (r * r * (angle - Math.sin(angle))) / 2, 1e-9);
  });

  // Archimedes: a segment of a parabola is two thirds of the parallelogram around it.
  test('of a parabola segment drawn as a cubic are two thirds of its box', () => {
    const parabola = cubic(point(0, 0), point(20, -40), point(40, -40), point(60, 0));
    expectNear(areaOf([parabola]), (2 / 3) * 60 * 30, 1e-9);
  });

  test('of any outline agree with the surveyor on a fine polygon, and do not change when it is moved', () => {
    fc.assert(
      fc.property(anyEdges, (edges) => {
        const outline = edges.flat();
        const polygonal = shoelace(flatten(outline, 1e-4).slice(0, -1));
        expectNear(areaOf(outline), polygonal, 0.2);
        expectNear(areaOf(translated(outline, point(1000, 500))), areaOf(outline), 1e-6);
      }),
      { numRuns: 50 },
    );
  });

  test('of no path are nothing', () => {
    expect(areaOf([])).toBe(0);
  });
});
