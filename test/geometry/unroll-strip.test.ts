import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { distance, point } from '../../src/geometry/point.ts';
import { distance3, type Point3, point3 } from '../../src/geometry/space.ts';
import { unroll } from '../../src/geometry/strip.ts';
import type { Side, TriangleStrip } from '../../src/geometry/triangle-strip.ts';
import { triangulateStrip } from '../../src/geometry/triangulate-strip.ts';
import { unrollStrip } from '../../src/geometry/unroll-strip.ts';
import { expectNear, expectSamePoint } from './near.ts';
import { polar, row } from './space-rails.ts';

/** Fails unless every side of every triangle is as long flat as in space. */
const expectLengthsKept = (strip: TriangleStrip): void => {
  const flat = unrollStrip(strip);
  let [i, j] = [0, 0];
  const kept = (p: Point3, q: Point3, a: { x: number; y: number }, b: { x: number; y: number }) =>
    expectNear(distance(a, b), distance3(p, q), 1e-8);
  const ruling = () => kept(strip.left[i]!, strip.right[j]!, flat.left[i]!, flat.right[j]!);
  ruling();
  for (const side of strip.steps) {
    const [k, rail, laid] = side === 'left' ? [i++, strip.left, flat.left] : [j++, strip.right, flat.right];
    kept(rail[k]!, rail[k + 1]!, laid[k]!, laid[k + 1]!);
    ruling();
  }
};

describe('unrolling a strip of triangles', () => {
  test('keeps the length of every side of every triangle', () => {
    const number = fc.double({ min: -1, max: 1, noNaN: true });
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 60 }),
        fc.integer({ min: 1, max: 60 }),
        fc.tuple(number, number, number, number),
        (n, m, [a, b, c, d]) => {
          const left = row(n, (t) => polar(90 + 20 * a, 3 * t, 30 * b * Math.sin(4 * t)));
          const right = row(m, (t) => polar(130 + 20 * c, 3 * t + 0.3 * d, 40 + 30 * a * Math.cos(3 * t)));
          expectLengthsKept(triangulateStrip(left, right));
        },
      ),
      { numRuns: 60 },
    );
  });

  test('agrees with the unrolling of paired rulings where the steps are theirs', () => {
    const left = row(40, (t) => point3(90 * Math.cos(t), 90 * Math.sin(2 * t), 10 * t));
    const right = row(40, (t) => point3(120 * Math.cos(t), 110 * Math.sin(2 * t), -30 + 15 * t * t));
    const steps = left.slice(1).flatMap((): Side[] => ['left', 'right']);
    const [ours, paired] = [unrollStrip({ left, right, steps }), unroll({ left, right })];
    for (let i = 0; i <= 40; i++) {
      expectSamePoint(ours.left[i]!, paired.left[i]!);
      expectSamePoint(ours.right[i]!, paired.right[i]!);
    }
  });

  const meridian = (side: number, from: number, to: number) =>
    row(50, (t) =>
      polar(95 * Math.cos(from + (to - from) * t), side * 0.5, 95 * Math.sin(from + (to - from) * t)),
    );

  test.each([
    ['end in a point', 0, Math.PI / 2],
    ['begin in a point', Math.PI / 2, 0],
    ['do both', -Math.PI / 2, Math.PI / 2],
  ])('lets a gore %s', (_, from, to) => {
    const strip = triangulateStrip(meridian(-1, from, to), meridian(1, from, to));
    expectLengthsKept(strip);
    const flat = unrollStrip(strip);
    // The rulings of a gore are parallel, so its two sides are as long, and mirror images.
    const width = (i: number) => distance(flat.left[i]!, flat.right[i]!);
    for (let i = 0; i <= 50; i++)
      expectNear(width(i), 2 * 95 * Math.cos(from + ((to - from) * i) / 50) * Math.sin(0.5), 1e-9);
  });

  test('lays the first ruling along +x from the origin and goes on towards +y', () => {
    const flat = unrollStrip(
      triangulateStrip(
        row(9, (t) => point3(5, 7 * t, 1)),
        row(4, (t) => point3(45, 7 * t, 1)),
      ),
    );
    expectSamePoint(flat.left[0]!, point(0, 0));
    expectSamePoint(flat.right[0]!, point(40, 0));
    expectSamePoint(flat.left[9]!, point(0, 7));
    expectSamePoint(flat.right[4]!, point(40, 7));
  });

  test('rolls a whole cone out about its tip', () => {
    const strip = triangulateStrip(
      [point3(0, 0, 80)],
      row(300, (t) => polar(60, 2 * Math.PI * t)),
    );
    const flat = unrollStrip(strip);
    for (const p of flat.right) expectNear(distance(p, flat.left[0]!), 100, 1e-9);
  });

  test('refuses rails that meet on the way, and steps that do not lead to the end', () => {
    const [a, b] = [point3(0, 0, 0), point3(10, 0, 0)];
    const crossing = {
      left: [a, point3(5, 5, 0), point3(0, 10, 0)],
      right: [b, point3(5, 5, 0), point3(10, 10, 0)],
    };
    expect(() => unrollStrip({ ...crossing, steps: ['left', 'right', 'left', 'right'] })).toThrow(RangeError);
    expect(() => unrollStrip({ left: [a, b], right: [b], steps: [] })).toThrow(RangeError);
  });
});
