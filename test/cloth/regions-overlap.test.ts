import { describe, expect, test } from 'vitest';
import { regionOf } from '../../src/cloth/region.ts';
import { regionsOverlap } from '../../src/cloth/regions-overlap.ts';
import type { Point } from '../../src/geometry/point.ts';
import { randomFrom } from '../../src/nesting/random.ts';
import { anyOutline, rectangle, star } from '../nesting/random-outlines.ts';
import { common, isThinner, placed, solidOf, without } from '../nesting/solid.ts';

const random = randomFrom(3);
const SIZE = 120;

/** Each with a copy or another outline over it: the same place, slid along a side, turned end for end, or anywhere. */
const pairs: readonly (readonly [readonly Point[], readonly Point[]])[] = Array.from(
  { length: 240 },
  (_, k) => {
    const one = anyOutline(random, SIZE);
    const other = k % 2 === 0 ? one : anyOutline(random, SIZE);
    const [p, q] = [one[0]!, one[1]!];
    const along = 2 * random() - 1;
    const shift = [
      { x: 0, y: 0 },
      { x: (q.x - p.x) * along, y: (q.y - p.y) * along },
      { x: SIZE * (random() - 0.5), y: SIZE * (random() - 0.5) },
    ][k % 3]!;
    return [one, placed(other, { rotation: k % 5 === 0 ? Math.PI : 0, ...shift })] as const;
  },
);

// Judged by the independent library: what both hold, and how wide a disc goes into that.
describe('two outlines over each other', { timeout: 60_000 }, () => {
  test('overlap where they share room for a disc of 0.25 mm, and not where none of 0.05 mm goes in', () => {
    let [over, apart] = [0, 0];
    for (const [a, b] of pairs) {
      const shared = common(solidOf(a), solidOf(b));
      const told = regionsOverlap(regionOf(a), regionOf(b));
      if (!isThinner(shared, 0.25)) {
        expect(told, JSON.stringify([a, b])).toBe(true);
        over++;
      } else if (isThinner(shared, 0.049)) {
        expect(told, JSON.stringify([a, b])).toBe(false);
        apart++;
      }
      expect(regionsOverlap(regionOf(b), regionOf(a))).toBe(told);
    }
    expect(Math.min(over, apart)).toBeGreaterThan(50);
  });

  test('stand out of each other where what the one leaves of the other has such room', () => {
    let [out, within] = [0, 0];
    for (const [a, b] of [...pairs, ...pairs.map(([a, b]) => [scaled(a, 0.3), b] as const)]) {
      const left = without(solidOf(a), solidOf(b));
      const told = regionsOverlap(regionOf(a), regionOf(b.toReversed(), false));
      if (!isThinner(left, 0.25)) {
        expect(told, JSON.stringify([a, b])).toBe(true);
        out++;
      } else if (isThinner(left, 0.049)) {
        expect(told, JSON.stringify([a, b])).toBe(false);
        within++;
      }
    }
    expect(Math.min(out, within)).toBeGreaterThan(50);
  });

  test('overlap as the very same, and slid along a side that both keep', () => {
    const band = rectangle(570, 40);
    const slid = (x: number, y = 0) => band.map((p) => ({ x: p.x + x, y: p.y + y }));
    const overlaps = (other: readonly Point[]) => regionsOverlap(regionOf(band), regionOf(other));
    expect(overlaps(band)).toBe(true);
    expect(overlaps(slid(5))).toBe(true);
    expect(overlaps(slid(565))).toBe(true);
    expect(overlaps(slid(570))).toBe(false);
    // Within what the shears know, and beyond it.
    expect(overlaps(slid(569.97))).toBe(false);
    expect(overlaps(slid(569.8))).toBe(true);
    expect(overlaps(slid(0, 39.97))).toBe(false);
    expect(overlaps(slid(0, 39.8))).toBe(true);
  });

  test('overlap where the one lies wholly within the other', () => {
    const small = star(random, 9, 10);
    expect(regionsOverlap(regionOf(small), regionOf(rectangle(100, 100)))).toBe(true);
    const within = small.map(({ x, y }) => ({ x: x + 50, y: y + 50 }));
    expect(regionsOverlap(regionOf(within), regionOf(rectangle(100, 100)))).toBe(true);
    expect(regionsOverlap(regionOf(within), regionOf(rectangle(100, 100), false))).toBe(false);
  });
});

const scaled = (ring: readonly Point[], k: number): readonly Point[] =>
  ring.map(({ x, y }) => ({ x: x * k, y: y * k }));
