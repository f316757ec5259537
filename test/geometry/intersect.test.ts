import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { flatten } from '../../src/geometry/flatten.ts';
import { crossings, selfCrossings } from '../../src/geometry/intersect.ts';
import { pathLength, pointAt, reversed } from '../../src/geometry/measure.ts';
import { arc, circle, cubic, line, type Path, polygon } from '../../src/geometry/path.ts';
import { cross, ORIGIN, type Point, point, subtract } from '../../src/geometry/point.ts';
import { crossesItself } from '../../src/geometry/self-crossing.ts';
import { expectNear, expectSamePoint } from './near.ts';
import { anyCurve, anyEdges } from './random-curves.ts';

const side = (a: Point, b: Point, p: Point): boolean => cross(subtract(b, a), subtract(p, a)) > 0;

/** How often the fine polygons on two curves cross, by the signs of the areas of four triangles. */
const chordCrossings = (p: readonly Point[], q: readonly Point[]): number => {
  let count = 0;
  for (let i = 1; i < p.length; i++) {
    const [a, b] = [p[i - 1]!, p[i]!];
    for (let j = 1; j < q.length; j++) {
      const [c, d] = [q[j - 1]!, q[j]!];
      if (Math.max(a.x, b.x) < Math.min(c.x, d.x) || Math.max(c.x, d.x) < Math.min(a.x, b.x)) continue;
      if (side(a, b, c) !== side(a, b, d) && side(c, d, a) !== side(c, d, b)) count++;
    }
  }
  return count;
};

describe('crossings', () => {
  test('of any two curves lie on both, where the distances say', () => {
    fc.assert(
      fc.property(anyCurve, anyCurve, (a, b) => {
        for (const { point: p, onA, onB } of crossings([a], [b])) {
          expectSamePoint(pointAt([a], onA), p, 2e-6);
          expectSamePoint(pointAt([b], onB), p, 2e-6);
        }
      }),
      { numRuns: 300 },
    );
  });

  test('are found near an end where a curve all but stands still, to turn back beyond it', () => {
    // A parallel that comes to a point, and the next one, which sets off a hair behind it at almost its slope.
    const coming = cubic(
      point(0, 0),
      point(0.22, -0.00021),
      point(0.302, -0.000815),
      point(0.302, -0.000815),
    );
    const going = cubic(
      point(0.28759, -0.000673),
      point(2.66474, -0.026527),
      point(5.04241, -0.131837),
      point(7.41859, -0.310667),
    );
    const [found, ...more] = crossings([coming], [going]);
    expect(more).toEqual([]);
    // Both run to the right all the way: which of them lies above is known at every x, from finer and finer chords.
    const above = (x: number): boolean => {
      const heightAt = (path: Path): number => {
        let [low, high] = [0, pathLength(path)];
        for (let i = 0; i < 60; i++) {
          const middle = (low + high) / 2;
          if (pointAt(path, middle).x < x) low = middle;
          else high = middle;
        }
        return pointAt(path, low).y;
      };
      return heightAt([coming]) > heightAt([going]);
    };
    expect(above(found!.point.x - 1e-4)).not.toBe(above(found!.point.x + 1e-4));
  });

  test('are as many as those of fine polygons on the curves', () => {
    fc.assert(
      fc.property(anyCurve, anyCurve, (a, b) => {
        const found = crossings([a], [b]);
        // Grazes and crossings at an end are left out: there a polygon can be on either side.
        const grazes = found.some(({ onA, onB }) => {
          const [la, lb] = [pathLength([a]), pathLength([b])];
          const ahead = (path: Path, at: number) =>
            subtract(pointAt(path, at + 0.1), pointAt(path, at - 0.1));
          const sine = cross(ahead([a], onA), ahead([b], onB)) / 0.04;
          return Math.min(onA, onB, la - onA, lb - onB) < 0.2 || !(Math.abs(sine) > 0.02);
        });
        fc.pre(!grazes);
        const polygons = (within: number) => chordCrossings(flatten([a], within), flatten([b], within));
        // A near miss is told from a touch by finer polygons.
        const coarse = polygons(1e-3);
        expect(found).toHaveLength(coarse === found.length ? coarse : polygons(1e-5));
      }),
      { numRuns: 200 },
    );
  });

  test('of a line with a circle are both its ends of the chord', () => {
    const found = crossings([line(point(-10, 3), point(10, 3))], circle(ORIGIN, 5));
    expect(found).toHaveLength(2);
    expectSamePoint(found[0]!.point, point(-4, 3));
    expectSamePoint(found[1]!.point, point(4, 3));
    expectNear(found[0]!.onA, 6, 1e-9);
  });

  test('count a touch once: a tangent, two circles side by side, a cubic on its highest point', () => {
    expect(crossings([line(point(-9, 5), point(9, 5))], circle(ORIGIN, 5))).toHaveLength(1);
    expect(crossings(circle(ORIGIN, 5), circle(point(8, 0), 3))).toHaveLength(1);
    const hump = cubic(point(0, 0), point(0, 40), point(60, 40), point(60, 0));
    const [touch, ...more] = crossings([hump], [line(point(0, 30), point(60, 30))]);
    expect(more).toEqual([]);
    expectSamePoint(touch!.point, point(30, 30), 1e-6);
  });

  test('at a corner that one path turns on the other are told once', () => {
    const roof = [line(point(0, 0), point(5, 5)), line(point(5, 5), point(10, 0))];
    expect(crossings(roof, [line(point(-5, 5), point(20, 5))])).toHaveLength(1);
    expect(crossings(roof, [line(point(5, 0), point(5, 10))])).toHaveLength(1);
  });

  test('of curves that run along each other are the ends of what they share', () => {
    const along = crossings([line(ORIGIN, point(10, 0))], [line(point(14, 0), point(4, 0))]);
    expect(along.map(({ onA, onB }) => [onA, onB])).toEqual([
      [4, 10],
      [10, 4],
    ]);
    const c = cubic(ORIGIN, point(20, 40), point(50, 30), point(60, 0));
    const shared = crossings([c], reversed([c]));
    expect(shared).toHaveLength(2);
    expectSamePoint(shared[0]!.point, ORIGIN);
    expectSamePoint(shared[1]!.point, point(60, 0));
  });

  test('of arcs on one circle are none unless the arcs meet', () => {
    const [a, b] = [arc(ORIGIN, point(10, 0), 1), arc(ORIGIN, point(-10, 0), 1)];
    expect(crossings([a], [b])).toEqual([]);
    expect(crossings([a], circle(ORIGIN, 11))).toEqual([]);
  });
});

describe('a path that crosses itself', () => {
  test('is told from one that only has joints', () => {
    expect(selfCrossings(polygon([ORIGIN, point(10, 0), point(10, 10), point(0, 10)]))).toEqual([]);
    expect(selfCrossings(circle(ORIGIN, 10))).toEqual([]);
    const halves = [arc(ORIGIN, point(10, 0), Math.PI), arc(ORIGIN, point(-10, 0), Math.PI)];
    expect(selfCrossings(halves)).toEqual([]);
  });

  test('is a bow tie once, in its middle', () => {
    const tie = polygon([ORIGIN, point(10, 10), point(10, 0), point(0, 10)]);
    const [knot, ...more] = selfCrossings(tie);
    expect(more).toEqual([]);
    expectSamePoint(knot!.point, point(5, 5));
    expectNear(knot!.onA, Math.sqrt(50), 1e-9);
  });

  test('can be one cubic alone, with a loop', () => {
    const loop = cubic(ORIGIN, point(100, 100), point(-50, 100), point(50, 0));
    const [knot, ...more] = selfCrossings([loop]);
    expect(more).toEqual([]);
    expectSamePoint(knot!.point, point(25, 30), 1e-9);
    expectSamePoint(pointAt([loop], knot!.onA), pointAt([loop], knot!.onB), 1e-6);
  });

  test('is judged alike by the quick question and by the full list', () => {
    fc.assert(
      fc.property(anyEdges, fc.integer({ min: 0, max: 8 }), (edges, spoiled) => {
        // One edge swapped for a chord across the outline, so that some outlines cross themselves.
        const outline = edges.flatMap((path, i) => (i === spoiled ? detour(path) : path));
        expect(crossesItself(outline)).toBe(selfCrossings(outline).length > 0);
      }),
      { numRuns: 300 },
    );
  });
});

/** The same ends, by way of a point beyond the origin. */
const detour = (path: Path): Path => {
  const { from, to } = path[0]!;
  const beyond = point(-from.x / 2, -from.y / 2);
  return [line(from, beyond), line(beyond, to)];
};
