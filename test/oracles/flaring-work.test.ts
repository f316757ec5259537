import { describe, expect, test } from 'vitest';
import { areaOf } from '../../src/geometry/area.ts';
import { pathLength } from '../../src/geometry/measure.ts';
import { ovalOfGirth } from '../../src/geometry/oval.ts';
import { arc, line } from '../../src/geometry/path.ts';
import { point } from '../../src/geometry/point.ts';
import { type RingSector, ringSector } from '../../src/geometry/ring-sector.ts';

const degrees = (radians: number) => (radians * 180) / Math.PI;
const radii = (s: RingSector, height: number) =>
  [Math.abs(s.bottomRadius), Math.abs(s.bottomRadius + height)].sort((a, b) => a - b) as [number, number];
const area = (s: RingSector) => areaOf([...s.bottom, ...s.right, ...s.top, ...s.left]);
/** The flat pattern of a frustum between two diameters at an upright height. */
const frustum = (bottom: number, top: number, height: number) => {
  const slant = Math.hypot(height, (top - bottom) / 2);
  return { slant, sector: ringSector(Math.PI * bottom, Math.PI * top, slant) };
};

describe('the handbooks’ flaring work', () => {
  // F. Anslow, Practical Millinery, 1922, p. 88.
  test('a brim 2 1/2 in wide from a head of 24 to a rim of 34 has radii 6 and 8 1/2 over exactly 4 radians', () => {
    const s = ringSector(24, 34, 2.5);
    const [small, large] = radii(s, 2.5);
    expect(small).toBeCloseTo(6, 10);
    expect(large).toBeCloseTo(8.5, 10);
    expect(s.angle).toBeCloseTo(4, 10);
    expect(area(s)).toBeCloseTo(72.5, 8);
    const drop = Math.acos(10 / (2 * Math.PI) / 2.5);
    expect(degrees(drop)).toBeCloseTo(50.46, 2);
  });

  // G. A. Martin, Make Your Own Hats, 1921, ch. I.
  test('a side crown 3 1/2 high, 24 1/4 in below and 1 1/2 less above, bows 1.294 in on radii 53.08 and 56.58', () => {
    const s = ringSector(24.25, 22.75, 3.5);
    const [small, large] = radii(s, 3.5);
    expect(small).toBeCloseTo(53.083, 3);
    expect(large).toBeCloseTo(56.583, 3);
    expect(degrees(s.angle)).toBeCloseTo(24.56, 2);
    expect(large * (1 - Math.cos(s.angle / 2))).toBeCloseTo(1.294, 3);
  });

  // Every Woman's Encyclopaedia, vol. 1, p. 76: a wire of 22 in lapped by 2.
  test('a circle of 20 in is 6.366 in across', () => {
    expect(2 * ovalOfGirth(20, 1).halfLength).toBeCloseTo(6.366, 3);
  });

  // A classroom page on cone nets prints 7.12, 11.39 and 126.4.
  test('a frustum of diameters 5 and 8 and height 4 has radii 7.12 and 11.39 over 126.4°', () => {
    const { slant, sector } = frustum(5, 8, 4);
    const [small, large] = radii(sector, slant);
    expect(small).toBeCloseTo(7.12, 2);
    expect(large).toBeCloseTo(11.39, 2);
    expect(degrees(sector.angle)).toBeCloseTo(126.4, 1);
  });

  // Math Central, University of Regina: a lampshade of 8 and 40 cm. The page prints 6.75 for the inner radius, having
  // taken the upright height from the outer one; the slant gives 6.600.
  test('a lampshade of 8 and 40 cm and height 21 has slant 26.4, outer radius 33 and a wedge of 142° missing', () => {
    const { slant, sector } = frustum(8, 40, 21);
    const [small, large] = radii(sector, slant);
    expect(slant).toBeCloseTo(26.401, 3);
    expect(large).toBeCloseTo(33.001, 3);
    expect(small).toBeCloseTo(6.6, 3);
    expect(360 - degrees(sector.angle)).toBeCloseTo(141.82, 2);
  });

  // E. M. Longfield, Sheet Metal Drafting, 1921, p. 128, sample and problem 30B.
  test.each([
    [6, 3, 3, 3.3541, 3.354, 6.708, 47.417],
    [8, 4, 4, 4.4721, 4.472, 8.944, 84.298],
  ])('Longfield’s flare from %d to %d, %d high', (large, small, height, slant, r, R, surface) => {
    const f = frustum(large, small, height);
    const [inner, outer] = radii(f.sector, f.slant);
    expect(f.slant).toBeCloseTo(slant, 4);
    expect(inner).toBeCloseTo(r, 3);
    expect(outer).toBeCloseTo(R, 3);
    expect(degrees(f.sector.angle)).toBeCloseTo(160.997, 3);
    expect(area(f.sector)).toBeCloseTo(surface, 3);
  });

  // Longfield, 1921, problem 30C: diameters 3 1/8 and 2 1/2, slant 7 1/2.
  test('Longfield’s nearly straight flare has a surface of 66.268 square inches', () => {
    expect(area(ringSector(Math.PI * 3.125, Math.PI * 2.5, 7.5))).toBeCloseTo(66.268, 3);
  });

  // Longfield, 1921, problem 19: sector of arc 14 and radius 7 (49 printed); cones of base 5 slant 12, base 7 slant 11 1/4.
  test.each([
    [14, 7, 49],
    [5 * Math.PI, 12, 94.248],
    [7 * Math.PI, 11.25, 123.7],
  ])('a sector of arc %d and radius %d has area %d', (along, r, expected) => {
    const a = arc(point(0, 0), point(r, 0), along / r);
    expect(areaOf([line(point(0, 0), a.from), a, line(a.to, point(0, 0))])).toBeCloseTo(expected, 3);
  });

  // Worked out from the cone formula at three depths; both arcs are measured again on the piece.
  test.each([
    [1.5, 8.4375, 9.9375, 152.79],
    [2, 11.25, 13.25, 114.59],
    [2.5, 14.0625, 16.5625, 91.67],
  ])('a flat-top of 22 1/2 to 26 1/2 in, %d deep', (depth, r, R, angle) => {
    const s = ringSector(22.5, 26.5, depth);
    const [small, large] = radii(s, depth);
    expect(small).toBeCloseTo(r, 4);
    expect(large).toBeCloseTo(R, 4);
    expect(degrees(s.angle)).toBeCloseTo(angle, 2);
    expect(pathLength(s.bottom)).toBeCloseTo(22.5, 6);
    expect(pathLength(s.top)).toBeCloseTo(26.5, 6);
  });

  // S = R·s/(R − r), A = 360·(R − r)/s: the same rule by radii, as a mathematics answer archive gives it (Doctor Math).
  test('the rule by girths and the rule by radii are one', () => {
    for (const [r, R, s] of [
      [40, 90, 70],
      [88.9, 105.1, 63.5],
      [10, 11, 200],
    ] as const) {
      const sector = ringSector(2 * Math.PI * r, 2 * Math.PI * R, s);
      expect(sector.bottomRadius + s).toBeCloseTo((R * s) / (R - r), 6);
      expect(degrees(sector.angle)).toBeCloseTo((360 * (R - r)) / s, 6);
    }
  });
});
