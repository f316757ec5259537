import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cheapestSteps, type StepCosts } from '../../src/geometry/cheapest-steps.ts';
import { wholeGrid } from '../../src/geometry/corridor.ts';
import { railOf } from '../../src/geometry/rail.ts';
import { rulingTwist } from '../../src/geometry/ruling-twist.ts';
import { cross3, distance3, dot3, norm3, type Point3, point3, subtract3 } from '../../src/geometry/space.ts';
import type { StripMeasure } from '../../src/geometry/strip-costs.ts';
import { type Side, type TriangleStrip, trianglesOf } from '../../src/geometry/triangle-strip.ts';
import { triangulateStrip } from '../../src/geometry/triangulate-strip.ts';
import { stripArea } from '../house/strip-area.ts';
import { expectNear } from './near.ts';
import { polar, row } from './space-rails.ts';

/** Every way to go up two rails, one point at a time. */
const everyWay = (lefts: number, rights: number): readonly Side[][] => {
  if (lefts === 0 && rights === 0) return [[]];
  const byLeft = lefts > 0 ? everyWay(lefts - 1, rights).map((rest): Side[] => ['left', ...rest]) : [];
  const byRight = rights > 0 ? everyWay(lefts, rights - 1).map((rest): Side[] => ['right', ...rest]) : [];
  return [...byLeft, ...byRight];
};

/** The rulings that a strip ends its steps on, its first one included. */
const rulingsOf = ({ steps }: TriangleStrip): readonly [number, number][] => {
  let [i, j] = [0, 0];
  return [[0, 0], ...steps.map((side): [number, number] => (side === 'left' ? [++i, j] : [i, ++j]))];
};

/** Each measure summed afresh, triangle by triangle. */
const total: Record<StripMeasure, (strip: TriangleStrip) => number> = {
  area: stripArea,
  fold: (strip) => {
    const triangles = trianglesOf(strip);
    const normals = triangles.map(([p, q, next]) => cross3(subtract3(q, p), subtract3(next, p)));
    return triangles.slice(1).reduce((sum, [p, q], k) => {
      const [a, b] = [normals[k]!, normals[k + 1]!];
      return sum + distance3(p, q) * Math.acos(Math.max(-1, Math.min(1, dot3(a, b) / norm3(a) / norm3(b))));
    }, 0);
  },
  twist: (strip) => {
    const [left, right] = [railOf(strip.left), railOf(strip.right)];
    const rulings = rulingsOf(strip);
    const share = (i: number, j: number) => 2 - 2 * Math.cos(rulingTwist(left, right, i, j));
    return strip.steps.reduce((sum, side, k) => {
      const [[i, j], [u, v]] = [rulings[k]!, rulings[k + 1]!];
      const length =
        side === 'left'
          ? distance3(strip.left[i]!, strip.left[u]!)
          : distance3(strip.right[j]!, strip.right[v]!);
      return sum + (length * (share(i, j) + share(u, v))) / 2;
    }, 0);
  },
};

const wobble = fc.array(fc.double({ min: -12, max: 12, noNaN: true }), { minLength: 15, maxLength: 15 });

/** Two rails of given counts, about as far apart as a side band is high, with every point shifted. */
const rails = (n: number, m: number, shifts: readonly number[]): readonly [Point3[], Point3[]] => {
  const rail = (count: number, x: number, from: number) =>
    Array.from({ length: count }, (_, i) =>
      point3(
        x + shifts[(from + 3 * i) % 15]!,
        (120 * i) / Math.max(1, count - 1) + shifts[(from + 3 * i + 1) % 15]!,
        shifts[(from + 3 * i + 2) % 15]!,
      ),
    );
  return [rail(n, 0, 0), rail(m, 60, 7)];
};

describe('the cheapest way through the grid of rulings', () => {
  test('is the cheapest of all ways, folds counted by the triangles at both their sides', () => {
    const sizes = fc.tuple(fc.integer({ min: 1, max: 6 }), fc.integer({ min: 1, max: 6 }));
    fc.assert(
      fc.property(
        sizes,
        fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 216, maxLength: 216 }),
        ([n, m], numbers) => {
          const costs: StepCosts = {
            left: Float64Array.from(numbers.slice(0, n * m)),
            right: Float64Array.from(numbers.slice(36, 36 + n * m)),
            turns: Float64Array.from(numbers.slice(72, 72 + 4 * n * m)),
          };
          const cost = (steps: readonly number[]) => {
            let [i, j, sum] = [0, 0, 0];
            for (const [k, step] of steps.entries()) {
              const place = i * m + j;
              sum += step === 0 ? costs.left[place]! : costs.right[place]!;
              if (k > 0) sum += costs.turns![4 * place + 2 * steps[k - 1]! + step]!;
              if (step === 0) i++;
              else j++;
            }
            return sum;
          };
          const found = cost([...cheapestSteps(m, wholeGrid(n, m), costs)]);
          const least = Math.min(
            ...everyWay(n - 1, m - 1).map((way) => cost(way.map((s) => (s === 'left' ? 0 : 1)))),
          );
          expectNear(found, least, 1e-12);
        },
      ),
      { numRuns: 150 },
    );
  });
});

describe('choosing the rulings of a strip', () => {
  test.each(['fold', 'area', 'twist'] as const)(
    'by %s makes it the least of all triangulations',
    (measure) => {
      fc.assert(
        fc.property(
          fc.integer({ min: 2, max: 6 }),
          fc.integer({ min: 2, max: 6 }),
          wobble,
          (n, m, shifts) => {
            const [left, right] = rails(n, m, shifts);
            const found = total[measure](triangulateStrip(left, right, { measure }));
            const all = everyWay(n - 1, m - 1).map((steps) => total[measure]({ left, right, steps }));
            // Twist has a share of shortness in it, which may outweigh as much as this on rails of some 200 mm.
            expect(found).toBeLessThanOrEqual(Math.min(...all) + (measure === 'twist' ? 2e-3 : 1e-5));
          },
        ),
        { numRuns: 60 },
      );
    },
  );

  test('takes every point of both rails in turn, whatever their counts', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 70 }),
        fc.integer({ min: 1, max: 70 }),
        wobble,
        (n, m, shifts) => {
          const [left, right] = rails(n, m, shifts);
          const { steps } = triangulateStrip(left, right);
          expect(steps.filter((s) => s === 'left').length).toBe(n - 1);
          expect(steps.filter((s) => s === 'right').length).toBe(m - 1);
        },
      ),
      { numRuns: 40 },
    );
  });

  test('finds the rulings of a cone to within one point, though its rails are sampled unlike each other', () => {
    const bent = (t: number) => t + 0.12 * Math.sin(2 * t);
    const angles = row(110, (t) => bent(Math.PI * t));
    const left = row(75, (t) => polar(60, Math.PI * t));
    const strip = triangulateStrip(
      left,
      angles.map((a) => polar(100, a, 50)),
    );
    for (const [i, j] of rulingsOf(strip)) {
      const next = Math.max(Math.PI / 75, angles[Math.min(j + 1, 110)]! - angles[Math.max(j - 1, 0)]!);
      expect(Math.abs((Math.PI * i) / 75 - angles[j]!)).toBeLessThan(next);
    }
  });

  test('fans from a corner: beside a cone about it, nothing else lies flat', () => {
    // A quarter of a cone with its tip at the corner of an L, a plane on either side.
    const tip = point3(0, 0, 0);
    const arm = (along: (t: number) => Point3) => row(10, along);
    const right = [...arm((t) => point3(0, -60 * (1 - t), 0)), ...arm((t) => point3(-60 * t, 0, 0)).slice(1)];
    const at = (t: number) => point3(50 * Math.cos(t), 50 * Math.sin(t), 20);
    const left = [
      ...arm((t) => point3(50, -60 * (1 - t), 20)),
      ...row(20, (t) => at((Math.PI / 2) * t)).slice(1),
      ...arm((t) => point3(-60 * t, 50, 20)).slice(1),
    ];
    const strip = triangulateStrip(left, right);
    expect(distance3(right[10]!, tip)).toBe(0);
    const ruledTo = (i: number) =>
      rulingsOf(strip)
        .filter(([l]) => l === i)
        .map(([, j]) => j);
    for (let i = 11; i <= 29; i++) expect(ruledTo(i)).toEqual([10]);
  });

  test('twice, near a first choice among few points, costs no more than once among all', () => {
    const pairs: readonly [readonly Point3[], readonly Point3[]][] = [
      [row(150, (t) => polar(60, 3 * t)), row(205, (t) => polar(100, 3 * t + 0.2 * Math.sin(3 * t), 50))],
      [row(140, (t) => point3(0, 100 * t, 0)), row(190, (t) => point3(80, 100 * t, 88 * t))],
      [
        row(120, (t) => polar(90, 2 * t, 60 * Math.sin(3 * t))),
        row(130, (t) => polar(40 + 60 * t, 2.4 * t, 70)),
      ],
      [
        row(100, (t) => polar(95 * Math.cos(1.5 * t), -0.5, 95 * Math.sin(1.5 * t))),
        row(144, (t) => polar(95 * Math.cos(1.5 * t), 0.5, 95 * Math.sin(1.5 * t))),
      ],
    ];
    for (const [left, right] of pairs) {
      const near = total.twist(triangulateStrip(left, right));
      const all = total.twist(triangulateStrip(left, right, { choice: Number.POSITIVE_INFINITY }));
      expect(near).toBeLessThanOrEqual(all * (1 + 1e-6) + 1e-9);
    }
  });

  test('of a strip that is its own mirror image mirrors them exactly', () => {
    // Symmetric about x = 0, as a side band is about the centre front; far from developable.
    const left = row(80, (t) =>
      point3(90 * Math.cos(Math.PI * t), 70 * Math.sin(Math.PI * t), 20 * Math.sin(Math.PI * t)),
    );
    const right = row(60, (t) => point3(110 * Math.cos(Math.PI * t), 100 * Math.sin(Math.PI * t), -50));
    const { steps } = triangulateStrip(left, right, { mirrored: true });
    expect(steps).toEqual([...steps].reverse());
    expect(() => triangulateStrip(left.slice(1), right, { mirrored: true })).toThrow(RangeError);
  });

  test('of a gore leads from each point to its mirror image', () => {
    const meridian = (side: number) =>
      row(60, (t) => polar(95 * Math.cos(1.57 * t), side * 0.5, 95 * Math.sin(1.57 * t)));
    for (const [i, j] of rulingsOf(triangulateStrip(meridian(-1), meridian(1))))
      expect(Math.abs(i - j)).toBeLessThan(2);
  });
});

describe('the area of a strip', () => {
  test('of a pyramid’s side is that of its faces', () => {
    const corner = (k: number, r: number, z: number) => polar(r, (k * Math.PI) / 2, z);
    const [left, right] = [row(4, (t) => corner(4 * t, 50, 0)), [point3(0, 0, 60)]];
    const slant = Math.hypot(60, 50 * Math.SQRT1_2);
    expectNear(stripArea(triangulateStrip(left, right)), 4 * 0.5 * 50 * Math.SQRT2 * slant, 1e-9);
  });

  test('of a plane ring is half the radii’s squares’ difference times the angle', () => {
    const strip = triangulateStrip(
      row(400, (t) => polar(70, 3 * t)),
      row(400, (t) => polar(130, 3 * t)),
    );
    expectNear(stripArea(strip), (3 * (130 ** 2 - 70 ** 2)) / 2, 0.3);
  });
});
