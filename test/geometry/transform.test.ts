import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { areaOf } from '../../src/geometry/area.ts';
import { flatten } from '../../src/geometry/flatten.ts';
import { pathLength, pointAt } from '../../src/geometry/measure.ts';
import { circle, isClosed } from '../../src/geometry/path.ts';
import { distance, ORIGIN, point } from '../../src/geometry/point.ts';
import { mirrored, rotated, scaled, translated } from '../../src/geometry/transform.ts';
import { expectNear, expectSamePoint } from './near.ts';
import { anyEdges, anyShare } from './random-curves.ts';

const angle = anyShare.map((share) => 14 * share - 7);

describe('moving an outline', () => {
  test('neither carrying nor turning it changes its length, its area or its kinds of curve', () => {
    fc.assert(
      fc.property(anyEdges, angle, (edges, turn) => {
        const outline = edges.flat();
        const moved = rotated(translated(outline, point(12, -5)), turn, point(3, 4));
        expectNear(pathLength(moved), pathLength(outline), 1e-6);
        expectNear(areaOf(moved), areaOf(outline), 1e-6);
        expect(moved.map(({ kind }) => kind)).toEqual(outline.map(({ kind }) => kind));
        expect(isClosed(moved)).toBe(true);
      }),
      { numRuns: 50 },
    );
  });

  test('a quarter turn takes east to north', () => {
    expectSamePoint(pointAt(rotated(circle(ORIGIN, 10), Math.PI / 2), 0), point(0, 10));
  });

  test('a mirrored outline lies on the other side of the fold, and still runs counter-clockwise', () => {
    fc.assert(
      fc.property(anyEdges, anyShare, (edges, share) => {
        const outline = edges.flat();
        const mirror = mirrored(outline);
        expectNear(areaOf(mirror), areaOf(outline), 1e-6);
        const length = pathLength(outline);
        const { x, y } = pointAt(outline, share * length);
        expectSamePoint(pointAt(mirror, (1 - share) * length), point(-x, y), 1e-5);
      }),
      { numRuns: 50 },
    );
  });
});

describe('scaling an outline', () => {
  test('alike both ways keeps arcs, and multiplies length and area', () => {
    const twice = scaled(circle(point(1, 2), 10), 2, 2);
    expect(twice).toHaveLength(1);
    expect(twice[0]!.kind).toBe('arc');
    expectNear(pathLength(twice), 40 * Math.PI, 1e-9);
  });

  test('with one factor negative mirrors it', () => {
    const mirror = scaled(circle(point(10, 0), 3), -1, 1);
    expectNear(areaOf(mirror), -9 * Math.PI, 1e-9);
    expect(mirror[0]!.kind).toBe('arc');
  });

  test('unalike makes an ellipse of a circle', () => {
    const ellipse = scaled(circle(ORIGIN, 100), 1, 0.8);
    expect(ellipse.every(({ kind }) => kind === 'cubic')).toBe(true);
    for (const { x, y } of flatten(ellipse, 0.01)) {
      // Points on the curve itself: how far the circle that was scaled is missed.
      expectNear(distance(ORIGIN, point(x, y / 0.8)), 100, 1.01e-4);
    }
    expectNear(areaOf(ellipse), Math.PI * 100 * 80, 0.05);
  });
});
