import { describe, expect, test } from 'vitest';
import { bucket } from '../../src/caps/bucket/bucket.ts';
import { bucketParameters } from '../../src/caps/bucket/parameters.ts';
import { defaultsOf } from '../../src/caps/parameter.ts';
import { type BrimSlope, brimShape, brimStrip, outerGirth } from '../../src/caps/parts/brim/brim-slope.ts';
import { brimParameters } from '../../src/caps/parts/brim/parameters.ts';
import { sunHatParameters } from '../../src/caps/sun-hat/parameters.ts';
import { sunHat } from '../../src/caps/sun-hat/sun-hat.ts';
import { areaOf } from '../../src/geometry/area.ts';
import { pathLength } from '../../src/geometry/measure.ts';
import { type Oval, ovalOfGirth } from '../../src/geometry/oval.ts';
import { type Arc, pathEnd, pathStart, radius } from '../../src/geometry/path.ts';
import type { SlopeShape } from '../../src/geometry/slope-shape.ts';
import { distance3 } from '../../src/geometry/space.ts';
import { degrees, inches } from '../../src/units.ts';

const inDegrees = (radians: number) => (radians * 180) / Math.PI;
const RING = { from: 0, to: 1 } as const;
const off = (oval: Oval, width: number, drop: number): BrimSlope => ({
  opening: { oval, out: 0 },
  width,
  drop,
});
const roundBrim = (girth: number, width: number, drop: number) => off(ovalOfGirth(girth, 1), width, drop);
/** Radii and angle of a ring, as drawn. */
const ringOf = ({ bottom, top }: SlopeShape) => {
  const [outer, inner] = [bottom[0] as Arc, top[0] as Arc];
  return { inner: radius(inner), outer: radius(outer), angle: inDegrees(Math.abs(outer.sweep)) };
};
const enclosed = (s: SlopeShape) => areaOf([...s.bottom, ...s.right, ...s.top, ...s.left]);

describe('the ring of a brim', () => {
  // R1 = r / cos drop, angle 360° · cos drop: the handbooks' flaring work on a brim (Kittredge, The New Metal Worker
  // Pattern Book; Longfield, Sheet Metal Drafting, 1921, ch. V), worked out to the figures printed here.
  test.each([
    [0, 1, 360],
    [10, 1.0154, 354.5],
    [15, 1.0353, 347.7],
    [20, 1.0642, 338.3],
    [30, 1.1547, 311.8],
    [40, 1.3054, 275.8],
    [45, Math.SQRT2, 254.6],
    [50, 1.5557, 231.4],
    [60, 2, 180],
    [70, 2.9238, 123.1],
    [75, 3.8637, 93.2],
  ])('that drops %d° has an inner radius of %d times the head’s over %d°', (drop, times, angle) => {
    // Cut in halves, so that a level one can be drawn too.
    const half = ringOf(brimShape(roundBrim(2 * Math.PI, 0.7, degrees(drop)), { from: -0.25, to: 0.25 }));
    expect(Math.abs(half.inner - times)).toBeLessThan(5e-5);
    expect(Math.abs(2 * half.angle - angle)).toBeLessThan(0.05);
  });

  // Samples of the same rule in mm: girth, width, drop; both radii, the angle, the rim.
  test.each([
    [580, 70, 30, 106.6, 176.6, 311.8, 960.9],
    [580, 60, 45, 130.5, 190.5, 254.6, 846.6],
    [580, 65, 60, 184.6, 249.6, 180, 784.2],
    [600, 90, 20, 101.6, 191.6, 338.3, 1131.4],
  ])(
    'off a girth of %d, %d wide, dropping %d°, comes off a bucket hat’s own draft',
    (girth, width, drop, inner, outer, angle, rim) => {
      const values = {
        ...defaultsOf(bucketParameters),
        ease: 0,
        brimWidth: width,
        brimDrop: degrees(drop),
      };
      const { pieces } = bucket.draft(values, { girth, ratio: 0.8, arc: 320 }).pattern;
      const outline = pieces.find(({ id }) => id === 'brim')!.outline;
      const edge = (name: string) => outline.find((e) => e.name === name)!.path;
      expect(Math.abs(radius(edge('inner')[0] as Arc) - inner)).toBeLessThan(0.05);
      expect(Math.abs(radius(edge('outer')[0] as Arc) - outer)).toBeLessThan(0.05);
      expect(Math.abs(inDegrees((edge('outer')[0] as Arc).sweep) - angle)).toBeLessThan(0.05);
      expect(Math.abs(pathLength(edge('outer')) - rim)).toBeLessThan(0.05);
      expect(pathLength(edge('inner'))).toBeCloseTo(girth, 9);
    },
  );

  // F. Anslow, Practical Millinery, 1922, p. 88: a brim 2 1/2 in wide, head 24, rim 34, as printed.
  test('of Anslow’s brim for a head of 24 and a rim of 34 drops 50.46°, 1.928 in from crown to edge, on radii 6 and 8 1/2', () => {
    const slope = roundBrim(24, 2.5, degrees(50.46));
    expect(outerGirth(slope)).toBeCloseTo(34, 2);
    const shape = brimShape(slope, RING);
    expect(ringOf(shape).inner).toBeCloseTo(6, 2);
    expect(ringOf(shape).outer).toBeCloseTo(8.5, 2);
    expect(ringOf(shape).angle).toBeCloseTo(229.183, 1);
    expect(enclosed(shape)).toBeCloseTo(72.5, 2);
    const { left, right } = brimStrip(slope, 0, 1);
    expect(left[0]!.z - right[0]!.z).toBeCloseTo(1.928, 3);
    expect(distance3(left[0]!, right[0]!)).toBeCloseTo(2.5, 9);
  });

  // Evening Republican (Rensselaer, Indiana), 4 May 1911: a child's hat, its brim a disc of 13 to 14 in.
  test.each([
    [13, 40.84],
    [14, 43.98],
  ])('cut from a disc of %d in is %d in round before a wedge is taken out', (across, rim) => {
    const head = 20;
    const flat = roundBrim(head, (across - head / Math.PI) / 2, 0);
    expect(outerGirth(flat)).toBeCloseTo(rim, 2);
    const half = brimShape(flat, { from: 0.25, to: 0.75 });
    expect(2 * pathLength(half.bottom)).toBeCloseTo(rim, 2);
    expect(ringOf(half).outer).toBeCloseTo(across / 2, 9);
  });
});

describe('slashing and lapping a brim', () => {
  // G. A. Martin, Make Your Own Hats, 1921, ch. II: a circle of 14 1/2 in on a wire of 25, lapped by 1/4 in at four or eight
  // slashes. What is lapped is taken off the rim, and the head girth is left alone. (As if the head were round.)
  const [across, wire] = [14.5, 25];
  const slant = across / 2 - wire / (2 * Math.PI);

  test.each([
    [4, 44.553, 17.9],
    [8, 43.553, 25.5],
  ])('at %d slashes leaves a rim of %d in and drops the brim by %d°', (slashes, rim, drop) => {
    expect(outerGirth(roundBrim(wire, slant, 0))).toBeCloseTo(45.553, 3);
    const lapped = roundBrim(wire, slant, Math.acos(1 - (slashes * 0.25) / (2 * Math.PI * slant)));
    expect(Math.abs(inDegrees(lapped.drop) - drop)).toBeLessThan(0.1);
    expect(outerGirth(lapped)).toBeCloseTo(rim, 3);
    expect(pathLength(brimShape(lapped, RING).top)).toBeCloseTo(wire, 9);
    expect(pathLength(brimShape(lapped, RING).bottom)).toBeCloseTo(rim, 3);
  });
});

describe('a brim on an oval head', () => {
  // Martin, 1921, ch. I and IV: a wire of 25 in, 2 in longer than broad, is 8.926 by 6.926.
  const wire = ovalOfGirth(25, 6.926 / 8.926);

  test('that is a round disc is 1 in wider at the sides than at front and back: we keep it equally wide', () => {
    const [front, side] = [7.25 - wire.halfLength, 7.25 - wire.halfBreadth];
    expect(front).toBeCloseTo(2.79, 2);
    expect(side).toBeCloseTo(3.79, 2);
    // The book prints 2 1/2 and 3 1/2, and "about 1 in" of difference.
    expect(side - front).toBeCloseTo(1, 2);
    const { left, right } = brimStrip(off(wire, 3.25, 0), -Math.PI, Math.PI);
    for (const [i, p] of left.entries()) expect(distance3(p, right[i]!)).toBeCloseTo(3.25, 9);
  });

  test('turns as it lies flat by the cosine of its drop for every turn of the opening', () => {
    // A developed curve keeps its geodesic curvature, here κ · cos drop: integrated once more, apart from the strips.
    for (const [ratio, drop, part] of [
      [0.8, 20, 0.5],
      [0.72, 50, 0.5],
      [0.78, 35, 0.25],
    ] as const) {
      const oval = ovalOfGirth(590, ratio);
      const { halfLength: a, halfBreadth: b } = oval;
      const cosine = Math.cos(degrees(drop));
      const n = 20_000;
      let [x, y] = [0, 0];
      for (let i = 0; i < n; i++) {
        // From the front, towards the side.
        const t = ((i + 0.5) / n) * 2 * Math.PI * part;
        const step = (Math.hypot(b * Math.cos(t), a * Math.sin(t)) * 2 * Math.PI * part) / n;
        const turn = Math.atan2(a * Math.sin(t), b * Math.cos(t)) * cosine;
        x += Math.cos(turn) * step;
        y += Math.sin(turn) * step;
      }
      const { top } = brimShape(off(oval, 90, degrees(drop)), { from: 0.5 - part, to: 0.5 + part });
      // Its right end against its middle, where it lies level.
      const [end, other] = [pathStart(top), pathEnd(top)];
      expect(Math.abs(end.x - other.x - 2 * x)).toBeLessThan(0.04);
      expect(Math.abs(end.y - 90 - y)).toBeLessThan(0.02);
    }
  });
});

describe('rules for a brim’s hole that we catch', () => {
  const acrossOf = (girth: number) =>
    2 * ringOf(brimShape(roundBrim(girth, 5, 0), { from: 0, to: 0.5 })).inner;

  // "Simple hat frames", home-millinery text of the 1920s: a child's head of 16 1/2 in is printed with a hole 5 1/2 across,
  // as if π were 3.
  test('π taken as 3 makes the hole for a head of 16 1/2 in 5 1/2 across and 17.279 round, 0.78 too much: 5.252 is right', () => {
    expect(acrossOf(16.5)).toBeCloseTo(5.252, 3);
    expect(acrossOf(17.279)).toBeCloseTo(5.5, 3);
  });

  // A tutorial for a floppy hat divides a head of 19 in by 6.28 and rounds 3.02548 up to 3.1 (common practice).
  test('a radius of 3.1 in for a head of 19 adds nearly half an inch: 3.02394 is right', () => {
    expect(acrossOf(19) / 2).toBeCloseTo(3.02394, 5);
    expect(acrossOf(19.478) / 2).toBeCloseTo(3.1, 4);
  });

  // A tutorial for a wide-brimmed hat prints 3 3/4 in for a head of 22 1/2 and 1 of ease (common practice).
  test('a radius of 3 3/4 in for 22 1/2 and 1 of ease is 0.06 in too much round: 3.7401 is right', () => {
    expect(acrossOf(23.5) / 2).toBeCloseTo(3.7401, 4);
    expect(acrossOf(23.5 + 0.062) / 2).toBeCloseTo(3.75, 4);
  });
});

describe('brims as the trade makes them', () => {
  // Common practice: a bucket's brim 2 to 3 in at 30 to 60° below level, its side 3 to 4 in; a sun hat's brim 3 1/2 to 5 in
  // at 10 to 30°.
  test('a bucket hat and a sun hat come with a brim that is usual for them', () => {
    const own = defaultsOf(bucketParameters);
    const sun = defaultsOf(sunHatParameters);
    const within = (value: number, least: number, most: number) => {
      expect(value).toBeGreaterThanOrEqual(least);
      expect(value).toBeLessThanOrEqual(most);
    };
    within(own.brimWidth, inches(2), inches(3));
    within(inDegrees(own.brimDrop), 30, 60);
    within(own.sideBandHeight, inches(3), inches(4));
    within(sun.brimWidth, inches(3.5), inches(5));
    within(inDegrees(sun.brimDrop), 10, 30);
    // Both stay within what the one table of brims can hold.
    within(sun.brimWidth, brimParameters.brimWidth.min, brimParameters.brimWidth.max);
  });

  test('a sun hat for 22 1/2 in and 1 of ease has a brim whose inner edge is 23 1/2 in round on an oval head', () => {
    const values = { ...defaultsOf(sunHatParameters), ease: inches(1) };
    const { pieces } = sunHat.draft(values, { girth: inches(22.5), ratio: 0.8, arc: 320 }).pattern;
    const round = pieces
      .filter(({ id }) => id.startsWith('brim'))
      .reduce((sum, { outline }) => sum + pathLength(outline.find(({ name }) => name === 'inner')!.path), 0);
    expect(Math.abs(round - inches(23.5))).toBeLessThan(0.05);
  });
});
