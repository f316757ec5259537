import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { distance3, norm3, point3, subtract3 } from '../../src/geometry/space.ts';
import { expectNear } from './near.ts';
import { polylineLength, sampleCurve, sampleEvenly } from './sample-curve.ts';
import { splineInSpace, straight } from './space-curve.ts';
import { polar, row } from './space-rails.ts';

const chords = (points: readonly { x: number; y: number; z: number }[]) =>
  points.slice(1).map((p, i) => distance3(points[i]!, p));

describe('the smooth curve through points in space', () => {
  const points = [
    point3(0, 0, 0),
    point3(40, 10, 5),
    point3(70, 50, 30),
    point3(60, 90, 20),
    point3(10, 120, 0),
  ];
  const knots = points.map((_, i) => polylineLength(points.slice(0, i + 1)));
  const total = knots.at(-1)!;

  test('passes through every point', () => {
    const curve = splineInSpace(points);
    for (const [i, p] of points.entries()) expect(distance3(curve(knots[i]! / total), p)).toBeLessThan(1e-9);
  });

  test('has one curvature on both sides of every inner point, and none at a free end', () => {
    const curve = splineInSpace(points);
    const h = 1e-4;
    const bent = (t: number) => {
      const [a, b, c] = [curve(t - h), curve(t), curve(t + h)];
      return subtract3(subtract3(a, b), subtract3(b, c));
    };
    const most = Math.max(...knots.slice(1, -1).map((knot) => norm3(bent(knot / total))));
    for (const knot of knots.slice(1, -1)) {
      const t = knot / total;
      expect(distance3(bent(t - h), bent(t + h))).toBeLessThan(0.01 * most);
    }
    expect(norm3(bent(h))).toBeLessThan(0.01 * most);
    expect(norm3(bent(1 - h))).toBeLessThan(0.01 * most);
  });

  test('leaves and arrives along the directions that it is given, whatever their length', () => {
    const curve = splineInSpace(points, { start: point3(0, 0, 7), end: point3(-0.1, 0, 0) });
    const [out, into] = [subtract3(curve(1e-6), curve(0)), subtract3(curve(1), curve(1 - 1e-6))];
    const speed = total * 1e-6;
    expect(distance3(out, point3(0, 0, speed))).toBeLessThan(1e-4 * speed);
    expect(distance3(into, point3(-speed, 0, 0))).toBeLessThan(1e-4 * speed);
  });

  test('through a circle’s points, with its tangents, stays within 0.01 mm of the circle', () => {
    const curve = splineInSpace(
      row(12, (t) => polar(90, Math.PI * t)),
      { start: point3(0, 1, 0), end: point3(0, -1, 0) },
    );
    for (const p of row(300, curve)) expectNear(Math.hypot(p.x, p.y), 90, 0.01);
  });

  test('through two points is the straight line', () => {
    const [a, b] = [point3(1, 2, 3), point3(11, -2, 8)];
    for (const t of [0, 0.3, 0.5, 1])
      expect(distance3(splineInSpace([a, b])(t), straight(a, b)(t))).toBeLessThan(1e-9);
  });

  test('refuses points that stand twice and directions without length', () => {
    expect(() => splineInSpace([points[0]!, points[0]!, points[1]!])).toThrow(RangeError);
    expect(() => splineInSpace([points[0]!])).toThrow(RangeError);
    expect(() => splineInSpace(points, { start: point3(0, 0, 0) })).toThrow(RangeError);
  });
});

describe('sampling a curve', () => {
  test('gives equal chords, none longer than asked, between the curve’s own ends', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 12, noNaN: true }),
        fc.double({ min: 0.2, max: 3, noNaN: true }),
        (longest, power) => {
          const curve = (t: number) => polar(80, 3 * t ** (1 + power), 40 * t * t);
          const points = sampleCurve(curve, longest);
          const [least, most] = [Math.min(...chords(points)), Math.max(...chords(points))];
          expect(most).toBeLessThanOrEqual(longest * 1.0005);
          expect(most / least).toBeLessThan(1.0005);
          expect(distance3(points[0]!, curve(0)) + distance3(points.at(-1)!, curve(1))).toBeLessThan(1e-12);
        },
      ),
      { numRuns: 40 },
    );
  });

  test('of a circle is short by the chords alone: 2·r·sin(π/2n) each', () => {
    for (const n of [8, 50, 200]) {
      const points = sampleEvenly((t) => polar(90, Math.PI * t), n);
      expectNear(polylineLength(points), n * 180 * Math.sin(Math.PI / 2 / n), 1e-6);
    }
  });

  test('of a helix at 2 mm is within 0.01 mm of its length', () => {
    const helix = (t: number) => polar(60, 2 * t, 60 * t);
    expectNear(polylineLength(sampleCurve(helix, 2)), Math.hypot(120, 60), 0.01);
  });
});
