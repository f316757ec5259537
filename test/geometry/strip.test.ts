import { describe, expect, test } from 'vitest';
import { halfShape, quarterShape, sideBandStrip } from '../../src/caps/parts/side-band/side-band-shape.ts';
import { sideSlope } from '../../src/caps/parts/side-band/side-slope.ts';
import { visorShape } from '../../src/caps/parts/visor/visor-shape.ts';
import { pathLength, pointAt } from '../../src/geometry/measure.ts';
import { anglesFromFront, type Oval, ovalArc, ovalNormal, ovalOfGirth } from '../../src/geometry/oval.ts';
import { distance, type Point, point } from '../../src/geometry/point.ts';
import { ringSector } from '../../src/geometry/ring-sector.ts';
import { distance3, point3 } from '../../src/geometry/space.ts';
import { unroll } from '../../src/geometry/strip.ts';
import { degrees } from '../../src/units.ts';

const steps = (n: number) => Array.from({ length: n + 1 }, (_, i) => i / n);

describe('unrolling a strip', () => {
  test('keeps every rail step and ruling of any strip', () => {
    const strip = {
      left: steps(40).map((t) => point3(90 * Math.cos(t), 90 * Math.sin(2 * t), 10 * t)),
      right: steps(40).map((t) => point3(120 * Math.cos(t), 110 * Math.sin(2 * t), -30 + 15 * t * t)),
    };
    const flat = unroll(strip);
    for (let i = 0; i < 40; i++) {
      expect(distance(flat.left[i]!, flat.right[i]!)).toBeCloseTo(
        distance3(strip.left[i]!, strip.right[i]!),
        9,
      );
      expect(distance(flat.left[i]!, flat.left[i + 1]!)).toBeCloseTo(
        distance3(strip.left[i]!, strip.left[i + 1]!),
        9,
      );
      expect(distance(flat.right[i]!, flat.right[i + 1]!)).toBeCloseTo(
        distance3(strip.right[i]!, strip.right[i + 1]!),
        9,
      );
    }
  });

  test('of a plane ring is the ring itself', () => {
    const at = (r: number, t: number) => point3(r * Math.cos(t), r * Math.sin(t), 25);
    const flat = unroll({ left: steps(60).map((t) => at(70, t)), right: steps(60).map((t) => at(130, t)) });
    const flatOf = (r: number, t: number) => point(-70 + r * Math.cos(t), r * Math.sin(t));
    for (const [i, t] of steps(60).entries()) {
      expect(distance(flat.right[i]!, flatOf(130, t))).toBeLessThan(1e-6);
    }
  });

  test('of a cylinder is a rectangle within 0.02 mm', () => {
    const at = (z: number, t: number) => point3(90 * Math.cos(4 * t), 90 * Math.sin(4 * t), z);
    const flat = unroll({ left: steps(256).map((t) => at(0, t)), right: steps(256).map((t) => at(38, t)) });
    for (const [i, t] of steps(256).entries()) {
      expect(distance(flat.left[i]!, point(0, 360 * t))).toBeLessThan(0.02);
      expect(distance(flat.right[i]!, point(38, 360 * t))).toBeLessThan(0.02);
    }
  });

  test.each([
    [558.8, 660.4, 63.5],
    [440, 720, 60],
    [600, 600.5, 110],
    [620, 560, 40],
  ])(
    'of the cone from %d to %d round, %d high, is its ring sector within 0.02 mm',
    (opening, crown, height) => {
      const slope = sideSlope(ovalOfGirth(crown, 1), opening, height);
      const flat = unroll(sideBandStrip(slope, -Math.PI / 2, Math.PI / 2));
      const sector = ringSector(opening / 2, crown / 2, height);
      const R = sector.bottomRadius + height;
      const angle = (crown - opening) / 2 / height;
      for (const [i, p] of flat.left.entries()) {
        const turn = (angle * i) / (flat.left.length - 1);
        expect(distance(p, point(R - R * Math.cos(turn), R * Math.sin(turn)))).toBeLessThan(0.02);
      }
    },
  );
});

/**
 * The other closed form: on a slope θ off an oval the flat edge has curvature κ·cos θ, so its tangent turns cos θ times as
 * fast as the oval's. Integrated directly from the centre front, in steps of 0.05 mm with the midpoint rule.
 */
const developedEdge = (oval: Oval, cosine: number, length: number): Point => {
  const count = Math.ceil(length / 0.05);
  const h = length / count;
  const middles = anglesFromFront(
    oval,
    Array.from({ length: count }, (_, i) => (i + 0.5) * h),
  );
  let [x, y] = [0, 0];
  for (const angle of middles) {
    const n = ovalNormal(oval, angle);
    const turned = cosine * Math.atan2(n.x, n.y);
    x += h * Math.cos(turned);
    y += h * Math.sin(turned);
  }
  return point(x, y);
};

describe('surfaces of equal slope off an oval', () => {
  test.each([
    [0.72, 0],
    [0.8, 30],
    [0.9, 45],
    [0.8, 70],
  ])('a visor’s inner edge at ratio %d and drop %d° follows κ·cos θ within 0.02 mm', (ratio, drop) => {
    const opening = ovalOfGirth(560, ratio);
    const shape = visorShape({
      opening,
      innerEdge: 190,
      depth: 55,
      drop: degrees(drop),
      fullness: 0.5,
      tipRounding: 8,
    });
    const length = pathLength(shape.inner);
    expect(Math.abs(length - 190)).toBeLessThan(0.02);
    for (const s of [20, 55, 95]) {
      const expected = developedEdge(opening, Math.cos(degrees(drop)), s);
      expect(distance(pointAt(shape.inner, length / 2 - s), expected)).toBeLessThan(0.02);
    }
  });

  test.each([0.75, 0.85, 0.95])('an oval side band of ratio %d follows κ·cos θ within 0.02 mm', (ratio) => {
    const rim = ovalOfGirth(660, ratio);
    const slope = sideSlope(rim, 560, 63.5);
    const shape = halfShape(slope, 'front');
    const cosine = 100 / (2 * Math.PI) / 63.5;
    const length = pathLength(shape.top);
    for (const s of [40, 100, 160]) {
      const { x, y } = developedEdge(rim, cosine, s);
      expect(distance(pointAt(shape.top, length / 2 - s), point(x, 63.5 - y))).toBeLessThan(0.02);
    }
  });

  test('quarters and halves of one oval side band have the same edges', () => {
    const slope = sideSlope(ovalOfGirth(660, 0.8), 560, 63.5);
    const [half, quarter] = [halfShape(slope, 'front'), quarterShape(slope, 'back')];
    expect(2 * pathLength(quarter.top)).toBeCloseTo(pathLength(half.top), 3);
    expect(2 * pathLength(quarter.bottom)).toBeCloseTo(pathLength(half.bottom), 3);
    expect(Math.abs(4 * pathLength(quarter.top) - ovalArc(slope.rim, 0, 2 * Math.PI))).toBeLessThan(0.05);
  });
});
