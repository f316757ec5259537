import { describe, expect, test } from 'vitest';
import { type Developability, developability } from '../../src/geometry/developability.ts';
import { type Point3, point3 } from '../../src/geometry/space.ts';
import type { TriangleStrip } from '../../src/geometry/triangle-strip.ts';
import { triangulateStrip } from '../../src/geometry/triangulate-strip.ts';
import { stripArea } from '../house/strip-area.ts';
import { expectNear } from './near.ts';
import { polar, row } from './space-rails.ts';

const expectDevelopable = (
  { meanTwist, greatestTwist, twistPerMm, areaRatio }: Developability,
  within: number,
) => {
  expectNear(meanTwist, 0, within);
  expectNear(greatestTwist, 0, 3 * within);
  expectNear(twistPerMm, 0, within / 10);
  expectNear(areaRatio, 1, 1e-5);
};

const bent = (t: number) => t + 0.1 * Math.sin(Math.PI * t);

/** Rails of strips that roll out flat, sampled unlike each other. */
const developables: Record<
  string,
  (n: number, m: number) => readonly [readonly Point3[], readonly Point3[]]
> = {
  'a right cone': (n, m) => [row(n, (t) => polar(60, 3 * t)), row(m, (t) => polar(100, 3 * bent(t), 50))],
  'an oblique cone': (n, m) => {
    const tip = point3(50, 10, 150);
    const towardsTip = (p: Point3, share: number) =>
      point3(p.x + share * (tip.x - p.x), p.y + share * (tip.y - p.y), p.z + share * (tip.z - p.z));
    return [
      row(n, (t) => polar(80, 3 * t)),
      row(m, (t) => towardsTip(polar(80, 3 * bent(t)), 0.4 + 0.2 * Math.sin(2 * bent(t)))),
    ];
  },
  'a cylinder cut aslant': (n, m) => [
    row(n, (t) => polar(90, 5 * t)),
    row(m, (t) => polar(90, 5 * bent(t), 70 + 30 * Math.cos(5 * bent(t)))),
  ],
  'the tangents of a helix': (n, m) => {
    const on = (t: number, along: number) =>
      point3(
        60 * Math.cos(t) - along * 0.8 * Math.sin(t),
        60 * Math.sin(t) + along * 0.8 * Math.cos(t),
        45 * t + along * 0.6,
      );
    return [row(n, (t) => on(2 * t, 30)), row(m, (t) => on(2 * bent(t), 110))];
  },
};

describe('how far a strip is from rolling out flat', () => {
  test.each(Object.entries(developables))(
    'is nothing for %s, and less so the finer it is sampled',
    (_, rails) => {
      const judged = (n: number, m: number) => developability(triangulateStrip(...rails(n, m)));
      expectDevelopable(judged(60, 85), 0.01);
      expectDevelopable(judged(240, 340), 0.0025);
    },
  );

  test('is nothing for a plane, however it is triangulated', () => {
    const [left, right] = [row(20, (t) => polar(70, 0.5 * t)), row(20, (t) => polar(130, 0.5 * t))];
    const steps = [
      ...right.slice(1).map(() => 'right' as const),
      ...left.slice(1).map(() => 'left' as const),
    ];
    expectDevelopable(developability({ left, right, steps }), 1e-6);
  });

  test('is nothing for a gore between two meridians, which is part of a cylinder', () => {
    const meridian = (side: number) =>
      row(60, (t) => polar(95 * Math.cos((t * Math.PI) / 2), side, 95 * Math.sin((t * Math.PI) / 2)));
    expectDevelopable(developability(triangulateStrip(meridian(-0.5), meridian(0.5))), 1e-9);
  });
});

/**
 * The saddle z = xy/c over a rectangle a by b, ruled along x. Its normal is (−y/c, −x/c, 1), so the normals at the
 * two ends of the ruling at y are atan(a/√(c² + y²)) apart; its area is the integral of √(1 + (x² + y²)/c²).
 */
const saddle = (a: number, b: number, c: number, count: number): TriangleStrip => {
  const left = row(count, (t) => point3(0, b * t, 0));
  const right = row(count, (t) => point3(a, b * t, (a * b * t) / c));
  return { left, right, steps: left.slice(1).flatMap(() => ['left', 'right'] as const) };
};

/** The mean of a function over 0 to 1, by the midpoint rule on 400 parts. */
const mean = (f: (t: number) => number): number =>
  row(399, (t) => f((t * 399 + 0.5) / 400)).reduce((sum, y) => sum + y, 0) / 400;

describe('a saddle', () => {
  test.each([
    [80, 100, 90],
    [60, 150, 200],
    [110, 90, 60],
  ])('%d by %d, falling 1 in %d, twists as its closed form says', (a, b, c) => {
    const slope = (x: number, y: number) => Math.sqrt(1 + (x * x + y * y) / (c * c));
    const twist = (y: number) => Math.atan(a / Math.sqrt(c * c + y * y));
    const area = a * b * mean((u) => mean((v) => slope(a * u, b * v)));
    const meanTwist = (a * b * mean((v) => mean((u) => slope(a * u, b * v)) * twist(b * v))) / area;
    const triangles = (a * b * mean((v) => slope(0, b * v) + slope(a, b * v))) / 2;
    const judged = developability(saddle(a, b, c, 400));
    expectNear(judged.greatestTwist, Math.atan(a / c), 0.003);
    expectNear(judged.meanTwist, meanTwist, 0.005);
    expectNear(judged.areaRatio, triangles / area, 0.001);
    expectNear(stripArea(saddle(a, b, c, 400)), triangles, 3e-4 * triangles);
  });

  test('that is narrow turns its normal by the root of −K a millimetre, K = −1/c² at its middle', () => {
    expectNear(developability(saddle(4, 4, 100, 40)).twistPerMm, 1 / 100, 1e-4);
  });

  test('comes out no further from flat by chosen rulings than by its own', () => {
    const own = saddle(80, 100, 90, 100);
    const chosen = triangulateStrip(own.left, own.right);
    expect(developability(chosen).meanTwist).toBeLessThanOrEqual(developability(own).meanTwist);
  });

  test('without area cannot be judged', () => {
    const still = [point3(0, 0, 0), point3(0, 0, 0)];
    expect(() => developability({ left: still, right: [point3(1, 0, 0)], steps: ['left'] })).toThrow(
      RangeError,
    );
  });
});
