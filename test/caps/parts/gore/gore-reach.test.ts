import { describe, expect, test } from 'vitest';
import { goreStrips } from '../../../../src/caps/parts/gore/form.ts';
import { goreShape } from '../../../../src/caps/parts/gore/gore.ts';
import { goreReach, halfWidthPerReach, reachOfGirth } from '../../../../src/caps/parts/gore/gore-reach.ts';
import { goredCrown } from '../../../../src/caps/parts/gore/gored-crown.ts';
import { directionAt, velocityAt } from '../../../../src/geometry/curve.ts';
import { pathLength, pointAt } from '../../../../src/geometry/measure.ts';
import type { Path } from '../../../../src/geometry/path.ts';
import { unroll } from '../../../../src/geometry/strip.ts';
import { widthAt } from './width-at.ts';

const ROUND = 600;
/** Crowns from close to full, low to high, as far as they can be sewn. */
const CROWNS = [
  { length: 170, fullness: 0, widest: 0.14 },
  { length: 150, fullness: 0, widest: 0.1 },
  { length: 230, fullness: 0, widest: 0.5 },
  { length: 195, fullness: 90, widest: 0.35 },
  { length: 260, fullness: 180, widest: 0.45 },
];
const COUNTS = [4, 5, 6, 7, 8, 9, 10, 11, 12];
const CASES = COUNTS.flatMap((gores) => CROWNS.map((crown) => ({ gores, girth: ROUND, ...crown })));

describe('a gore', () => {
  test('has tips that make a full turn together, without a point or a dimple', () => {
    for (const wish of CASES) {
      const { right, left } = goreShape(goreReach(wish), wish.gores);
      const up = directionAt(right.at(-1)!, 1);
      const down = directionAt(left[0]!, 0);
      const tip = Math.acos(-(up.x * down.x + up.y * down.y));
      expect(Math.abs(wish.gores * tip - 2 * Math.PI)).toBeLessThan(1e-9);
    }
  });

  test('stands square on a straight lower edge, a share of the girth wide', () => {
    for (const wish of CASES) {
      const { bottom, right, left } = goreShape(goreReach(wish), wish.gores);
      expect(bottom).toHaveLength(1);
      expect(Math.abs(directionAt(right[0]!, 0).x)).toBeLessThan(1e-12);
      expect(Math.abs(directionAt(left.at(-1)!, 1).x)).toBeLessThan(1e-12);
      expect(Math.abs(pathLength(bottom) * wish.gores - wish.girth)).toBeLessThan(1e-9);
    }
  });

  test('is as long up the middle as wished, and as wide as wished at its widest place', () => {
    for (const wish of CASES) {
      const { right } = goreShape(goreReach(wish), wish.gores);
      expect(right.at(-1)!.to).toEqual({ x: 0, y: wish.length });
      const wide = widthAt(right, wish.length * wish.widest);
      expect(Math.abs(wide * wish.gores - wish.girth - wish.fullness)).toBeLessThan(1e-6);
    }
  });

  test('never leans further than level, and turns one way only above its widest place', () => {
    for (const wish of CASES) {
      const [side, turn] = goreReach(wish);
      const slopes = (curve: Path[number]) =>
        Array.from({ length: 101 }, (_, i) => velocityAt(curve, i / 100)).map((v) => v.x / v.y);
      for (const slope of slopes(side!)) expect(slope >= -1e-9 && slope < 1).toBe(true);
      const turning = slopes(turn!);
      for (const slope of turning) expect(slope <= 1e-9 && slope >= -1 - 1e-9).toBe(true);
      expect(turning.every((slope, i) => i === 0 || slope <= turning[i - 1]! + 1e-9)).toBe(true);
    }
  });

  test('is what its strip in space rolls out to', () => {
    for (const wish of CASES) {
      const reach = goreReach(wish);
      const crown = {
        gores: wish.gores,
        frontSeam: 'seam' as const,
        reach,
        kindOf: () => ({ id: 'gore', name: 'Gore', cloths: ['outer' as const] }),
        lower: 'band' as const,
      };
      const { copies } = goredCrown(crown);
      const { strip } = goreStrips(crown, copies, 0)[0]!;
      const flat = unroll(strip);
      const { right } = goreShape(reach, wish.gores);
      const half = wish.girth / wish.gores / 2;
      for (const p of flat.right.slice(1, -1)) {
        expect(Math.abs(widthAt(right, p.y) / 2 - (p.x - half))).toBeLessThan(1e-4);
      }
      expect(Math.abs(flat.right.at(-1)!.y - wish.length)).toBeLessThan(1e-4);
    }
  });

  test('near a quarter of a circle follows the widths of a ball with flat sides', () => {
    // Sphere gores by the tangent rule: width 2R tan(π/n) cos φ at Rφ up the middle.
    for (const gores of COUNTS) {
      const r = reachOfGirth(ROUND, gores);
      const length = (r * Math.PI) / 2 / 0.9;
      const { right } = goreShape(
        goreReach({ gores, girth: ROUND, length, fullness: 0, widest: 0.1 }),
        gores,
      );
      for (let degrees = 0; degrees < 90; degrees += 5) {
        const phi = (degrees * Math.PI) / 180;
        const width = widthAt(right, length * 0.1 + r * phi);
        expect(Math.abs(width - 2 * r * halfWidthPerReach(gores) * Math.cos(phi))).toBeLessThan(
          0.02 * r * halfWidthPerReach(gores),
        );
      }
    }
  });

  test('cannot be so short that the crown does not close', () => {
    expect(() => goreReach({ gores: 6, girth: 600, length: 95, fullness: 0, widest: 0.1 })).toThrow(
      RangeError,
    );
    expect(() => goreReach({ gores: 6, girth: Number.NaN, length: 195, fullness: 0, widest: 0.1 })).toThrow(
      RangeError,
    );
    expect(pointAt(goreReach({ gores: 6, girth: 600, length: 99, fullness: 0, widest: 0.1 }), 1e9)).toEqual({
      x: 0,
      y: 99,
    });
  });
});
