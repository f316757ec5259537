import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { areaOf } from '../../src/geometry/area.ts';
import { boundsOf } from '../../src/geometry/bounds.ts';
import { flatten } from '../../src/geometry/flatten.ts';
import { selfCrossings } from '../../src/geometry/intersect.ts';
import { pathLength } from '../../src/geometry/measure.ts';
import { type CornerShape, offsetOutline } from '../../src/geometry/offset.ts';
import { cubic, isClosed, line, type Path, polygon, radius } from '../../src/geometry/path.ts';
import { distance, ORIGIN, point } from '../../src/geometry/point.ts';
import { crossingsOfRing } from '../house/simple-ring.ts';
import { clockwise, crescent, oval, rectangle, ringSector, round, roundedBar } from './cap-outlines.ts';
import { expectNear, expectSamePoint } from './near.ts';
import { anyEdges } from './random-curves.ts';

const offset = (edges: readonly Path[], by: number, corner: CornerShape = 'mitred'): Path[] =>
  offsetOutline(edges.map((path) => ({ path, by, corner })));

const corners = (edges: readonly Path[]): [number, number][] =>
  edges.flat().map(({ from }) => [Math.round(from.x * 1e9) / 1e9 + 0, Math.round(from.y * 1e9) / 1e9 + 0]);

describe('the cut line of one width', () => {
  test('of a circle is the circle that much larger or smaller, one arc', () => {
    for (const by of [6, -6]) {
      const [only, ...more] = offset(round(105), by).flat();
      expect(more).toEqual([]);
      expect(only?.kind).toBe('arc');
      expectNear(pathLength([only!]), 2 * Math.PI * (105 + by), 1e-9);
    }
  });

  test('of a rectangle is the rectangle with whole corners, in straight pieces', () => {
    const out = offset(rectangle(200, 16), 6);
    expect(boundsOf(out.flat())).toEqual({ min: point(-6, -6), max: point(206, 22) });
    expectNear(areaOf(out.flat()), 212 * 28, 1e-9);
    // Each edge runs from corner to corner in one line.
    expectSamePoint(out[0]![0]!.to, point(206, -6));
    expect(out.map((path) => path.length)).toEqual([1, 1, 1, 1]);
  });

  test('of a ring sector has arcs about the same centre', () => {
    const [inner, , outer] = offset(ringSector(300, 360, 0.8), 6);
    const arcs = [inner!, outer!].map((path) => path.find(({ kind }) => kind === 'arc')!);
    arcs.forEach((a, i) => {
      if (a.kind !== 'arc') throw new Error('the parallel of an arc is an arc');
      expectNear(radius(a), [294, 366][i]!, 1e-9);
      expectSamePoint(a.centre, ORIGIN);
    });
  });

  test('of a smooth oval stands off it by the width all round', () => {
    const stitch = oval(80, 100);
    for (const by of [6, -6]) {
      const cut = offset(stitch, by).flat();
      const fine = flatten(stitch.flat(), 1e-4);
      for (const p of flatten(cut, 0.5)) {
        expectNear(Math.min(...fine.map((q) => distance(p, q))), 6, 0.011);
      }
    }
  });

  test('of width nought is the stitch line itself', () => {
    expect(offset(crescent, 0)).toEqual(crescent);
  });

  test('of a smooth or sharp outline has a corner only where the outline has', () => {
    expect(
      offset(oval(80, 100), 6)
        .flat()
        .every(({ kind }) => kind === 'cubic'),
    ).toBe(true);
    expect(offset(rectangle(50, 50), -6).map((path) => path.length)).toEqual([1, 1, 1, 1]);
  });
});

describe('corners', () => {
  const wedge = (degrees: number): Path[] => {
    const angle = (degrees * Math.PI) / 180;
    const tip = point(300 * Math.cos(angle / 2), 0);
    const side = 300 * Math.sin(angle / 2);
    return polygon([point(0, side), point(0, -side), tip]).map((l) => [l]);
  };

  test('mitred at 60 degrees run out two widths exactly', () => {
    const { max } = boundsOf(offset(wedge(60), 6).flat());
    expectNear(max.x, 300 * Math.cos(Math.PI / 6) + 12, 1e-9);
  });

  test('sharper than that are cut off square at two widths, where no allowance is missing', () => {
    for (const degrees of [5, 20, 45, 59]) {
      const { max } = boundsOf(offset(wedge(degrees), 6).flat());
      expectNear(max.x, 300 * Math.cos((degrees * Math.PI) / 360) + 12, 1e-9);
    }
  });

  test('rounded keep their distance from the corner', () => {
    const bend = offset(rectangle(50, 50), 6, 'round')
      .flat()
      .filter(({ kind }) => kind === 'arc');
    expect(bend).toHaveLength(4);
    expectNear(pathLength(bend), 2 * Math.PI * 6, 1e-9);
  });

  test('squared end square to the edge before them, level with the next cut line', () => {
    // A corner of 60 degrees between the base, from the left, and the edge that leans back over it.
    const triangle = polygon([ORIGIN, point(100, 0), point(50, 50 * Math.sqrt(3))]).map((l) => [l]);
    const [base] = offset(triangle, 6, 'squared');
    const reach = 100 + 6 / Math.sin(Math.PI / 3);
    expectSamePoint(base![0]!.to, point(reach, -6));
    expectSamePoint(base![1]!.to, point(reach, 0));
    const [, next] = offset(triangle, 6, 'squaredNext');
    // Seen from the edge after the first corner, its allowance ends square to it.
    const along = { x: -0.5, y: Math.sqrt(3) / 2 };
    const tip = next![0]!.from;
    expectNear((tip.x - 100) * along.x + tip.y * along.y, -6 / Math.sin(Math.PI / 3), 1e-9);
  });

  test('squared in a blunt corner meet the next cut line where it passes', () => {
    // A corner of 120 degrees: the foot stands on the next cut line, past its start.
    const hexagon = polygon(
      [0, 1, 2, 3, 4, 5].map((i) =>
        point(100 * Math.cos((i * Math.PI) / 3), 100 * Math.sin((i * Math.PI) / 3)),
      ),
    ).map((l) => [l]);
    const out = offset(hexagon, 6, 'squared');
    expect(selfCrossings(out.flat())).toEqual([]);
    for (const path of out) {
      // Along the edge, out to the tip; square back to the stitch line's level.
      const [straight, back] = path;
      const reach = pathLength([straight!]);
      expectNear(reach, 100 + 6 / Math.sin(Math.PI / 3) - 6 / Math.tan(Math.PI / 3), 1e-9);
      expectNear(pathLength([back!]), 6, 1e-9);
    }
  });

  test('that are hollow are cut where the cut lines cross', () => {
    const step = polygon([ORIGIN, point(40, 0), point(40, 20), point(20, 20), point(20, 40), point(0, 40)]);
    const out = offset(
      step.map((l) => [l]),
      5,
    );
    expect(corners(out)).toContainEqual([25, 25]);
    expectNear(areaOf(out.flat()), areaOf(step) + 5 * 160 + 25 * 4, 1e-9);
  });
});

describe('edges of different widths', () => {
  const bag = rectangle(100, 60);
  const widths = (by: readonly number[], edges = bag): Path[] =>
    offsetOutline(edges.map((path, i) => ({ path, by: by[i]! })));

  test('meet at the corner of their own two cut lines', () => {
    const out = widths([10, 6, 3, 0]);
    expect(boundsOf(out.flat())).toEqual({ min: point(0, -10), max: point(106, 63) });
    expectNear(areaOf(out.flat()), 106 * 73, 1e-9);
  });

  test('leave a fold as it is, and run square onto it', () => {
    const [, , , fold] = widths([6, 6, 6, 0]);
    expectSamePoint(fold![0]!.from, point(0, 66));
    expectSamePoint(fold!.at(-1)!.to, point(0, -6));
    expect(fold).toHaveLength(1);
  });

  test('cross a slanting fold on the line of the fold', () => {
    // Half of a six-sided piece, folded on its left: the top slants down onto the fold.
    const half = polygon([ORIGIN, point(50, 0), point(50, 60), point(0, 30)]).map((l) => [l]);
    const [, , , fold] = widths([6, 6, 6, 0], half);
    const [start, end] = [fold![0]!.from, fold!.at(-1)!.to];
    expectSamePoint(end, point(0, -6));
    // The top's cut line is 6 mm off it: up by 6 over the cosine of its slant.
    expectSamePoint(start, point(0, 30 + 6 * Math.hypot(1, 30 / 50)));
  });

  test('step along the normal where one edge runs smoothly into another', () => {
    const straight = [
      [line(ORIGIN, point(50, 0))],
      [line(point(50, 0), point(100, 0))],
      ...rectangle(100, 60).slice(1),
    ];
    const out = offsetOutline(straight.map((path, i) => ({ path, by: i === 0 ? 4 : 10 })));
    expect(out[0]).toEqual([line(point(-10, -4), point(50, -4)), line(point(50, -4), point(50, -10))]);
    expect(corners(out)).toContainEqual([50, -10]);
    expect(corners(out)).toContainEqual([50, -4]);
  });

  test('go in on one edge and out on another', () => {
    const out = widths([-5, 5, 5, 5]);
    expect(boundsOf(out.flat())).toEqual({ min: point(-5, 5), max: point(105, 65) });
  });
});

describe('what the cut line cannot reach', () => {
  test('a rounding tighter than an inward clearance becomes the corner of its neighbours', () => {
    const out = offset(roundedBar(100, 40, 3), -5).flat();
    expect(out.every(({ kind }) => kind === 'line')).toBe(true);
    expectNear(areaOf(out), 90 * 30, 1e-9);
    // One exactly as tight, too.
    expectNear(areaOf(offset(roundedBar(100, 40, 5), -5).flat()), 90 * 30, 1e-6);
    // One wider keeps what is left of its radius.
    const rest = offset(roundedBar(100, 40, 8), -5).flat();
    expectNear(pathLength(rest.filter(({ kind }) => kind === 'arc')), 2 * Math.PI * 3, 1e-9);
  });

  test('a slot narrower than two allowances closes', () => {
    const slotted = polygon([
      ORIGIN,
      point(100, 0),
      point(100, 40),
      point(60, 40),
      point(60, 42),
      point(100, 42),
      point(100, 100),
      point(0, 100),
    ]);
    const out = offset(
      slotted.map((l) => [l]),
      6,
    );
    expectNear(areaOf(out.flat()), 112 * 112, 1e-9);
    // The three edges of the slot have nothing left of them.
    expect(out.slice(2, 5).flat()).toEqual([]);
  });

  test('a hair of an edge that is more hollow than the allowance is wide leaves no tail behind', () => {
    // The lower edge of a cap’s side, which just before a joint turns in less than 20 mm.
    const [start, joint, end] = [
      point(18.477435166806178, 5.338080417158485),
      point(24.094257994186762, 5.349547688154795),
      point(32.50351275731185, 4.984726724292954),
    ];
    const [right, left] = [point(end.x, 60), point(start.x, 60)];
    const edges: Path[] = [
      [
        cubic(
          start,
          point(19.158901604164587, 5.340956909518028),
          point(23.4127697231089, 5.356959459168264),
          joint,
        ),
        cubic(
          joint,
          point(26.89992355772273, 5.319033662338316),
          point(29.705616786965635, 5.194564004455216),
          end,
        ),
      ],
      [line(end, right)],
      [line(right, left)],
      [line(left, start)],
    ];
    const out = offset(edges, 20).flat();
    expect(crossingsOfRing(flatten(out, 0.001))).toEqual([]);
    const bottom = flatten(out, 0.001).filter(({ x, y }) => y < 0 && x > start.x && x < end.x);
    bottom.slice(1).forEach(({ x }, i) => {
      expect(x).toBeGreaterThan(bottom[i]!.x);
    });
  });

  test('nothing is left of a piece narrower than two clearances', () => {
    expect(offset(rectangle(100, 9), -5).flat()).toEqual([]);
    expect(offset(round(5), -6).flat()).toEqual([]);
    expect(offset(oval(5, 50), -6).flat()).toEqual([]);
  });

  test('of a piece that falls apart the larger part stays', () => {
    const dumbbell = polygon([
      ORIGIN,
      point(60, 0),
      point(60, 18),
      point(100, 18),
      point(100, 0),
      point(140, 0),
      point(140, 40),
      point(100, 40),
      point(100, 22),
      point(60, 22),
      point(60, 40),
      point(0, 40),
    ]);
    expectNear(
      areaOf(
        offset(
          dumbbell.map((l) => [l]),
          -5,
        ).flat(),
      ),
      50 * 30,
      1e-9,
    );
  });
});

describe('any outline', () => {
  const width = fc.constantFrom(3, 6, 10, 15);
  const shape = fc.constantFrom<CornerShape>('mitred', 'squared', 'squaredNext', 'round');

  test('has a closed, simple, counter-clockwise cut line, edge after edge in order', () => {
    fc.assert(
      fc.property(
        anyEdges,
        fc.array(fc.tuple(width, shape), { minLength: 9, maxLength: 9 }),
        (edges, wishes) => {
          fc.pre(selfCrossings(edges.flat()).length === 0 && areaOf(edges.flat()) > 100);
          const out = offsetOutline(
            edges.map((path, i) => ({ path, by: wishes[i]![0], corner: wishes[i]![1] })),
          );
          const all = out.flat();
          expect(isClosed(all)).toBe(true);
          all.slice(1).forEach((curve, i) => {
            expect(distance(all[i]!.to, curve.from)).toBeLessThan(1e-6);
          });
          expect(selfCrossings(all)).toEqual([]);
          expect(areaOf(all)).toBeGreaterThan(areaOf(edges.flat()));
        },
      ),
      { numRuns: 150 },
    );
  });

  test('keeps at least the width it was given from every point of the stitch line', () => {
    fc.assert(
      fc.property(anyEdges, width, shape, (edges, by, corner) => {
        // A squared corner is cut across, and may come as near as the corner itself.
        fc.pre(!corner.startsWith('squared'));
        fc.pre(selfCrossings(edges.flat()).length === 0 && areaOf(edges.flat()) > 100);
        const stitch = flatten(edges.flat(), 0.01);
        for (const p of flatten(offset(edges, by, corner).flat(), 1)) {
          const nearest = Math.min(...stitch.map((q) => distance(p, q)));
          // A foot and the chord corner nearest to it are two points: only too near is wrong here.
          expect(nearest).toBeGreaterThan(by - 0.02);
        }
      }),
      { numRuns: 60 },
    );
  });
});

describe('a mistake in the program', () => {
  test('is told: an open or clockwise outline, a width that is no number', () => {
    expect(() => offset(rectangle(50, 50).slice(1), 6)).toThrow(RangeError);
    expect(() => offset(clockwise(rectangle(50, 50)), 6)).toThrow(RangeError);
    expect(() => offset(rectangle(50, 50), Number.NaN)).toThrow(RangeError);
    expect(() => offset([], 6)).toThrow(RangeError);
  });
});
