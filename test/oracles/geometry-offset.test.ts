// Cut lines judged by clipper2-ts 2 (BSL-1.0, on npm): it offsets polygons, here fine ones on the same curves.
import { Clipper, EndType, JoinType } from 'clipper2-ts';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { areaOf } from '../../src/geometry/area.ts';
import { flatten } from '../../src/geometry/flatten.ts';
import { selfCrossings } from '../../src/geometry/intersect.ts';
import { type CornerShape, offsetOutline } from '../../src/geometry/offset.ts';
import { type Path, polygon } from '../../src/geometry/path.ts';
import { type Point, point } from '../../src/geometry/point.ts';
import { crescent, oval, rectangle, ringSector, round, roundedBar } from '../geometry/cap-outlines.ts';
import { deviation } from '../geometry/deviation.ts';
import { anyEdges } from '../geometry/random-curves.ts';

const JOIN = { mitred: JoinType.Miter, round: JoinType.Round } as const;

const byClipper = (edges: readonly Path[], by: number, corner: 'mitred' | 'round', fine: number): Point[] => {
  const outline = flatten(edges.flat(), fine).slice(0, -1);
  const found = Clipper.inflatePathsD([outline], by, JOIN[corner], EndType.Polygon, 2.01, 6, fine);
  return [...found].sort((p, q) => Clipper.areaD(q) - Clipper.areaD(p))[0] ?? [];
};

/** The larger of the two distances by which either line strays from the other, mm. */
const strays = (edges: readonly Path[], by: number, corner: 'mitred' | 'round', fine = 2e-4): number => {
  const cut = offsetOutline(edges.map((path) => ({ path, by, corner: corner as CornerShape }))).flat();
  const theirs = byClipper(edges, by, corner, fine);
  if (cut.length === 0 || theirs.length === 0) return cut.length === theirs.length ? 0 : Infinity;
  const mine = flatten(cut, 1e-3).slice(0, -1);
  return Math.max(deviation(mine, theirs), deviation(theirs, mine));
};

describe('the cut line of a cap piece, judged by clipper2-ts', () => {
  const pieces: readonly [string, readonly Path[]][] = [
    ['a circle of radius 105', round(105)],
    ['a ring sector', ringSector(349.25, 412.75, 0.8)],
    ['an oval', oval(80, 100)],
    ['a strap', rectangle(200, 16)],
    ['a bar with rounded ends', roundedBar(180, 60, 8)],
    ['a crescent with sharp tips', crescent],
  ];
  for (const [name, edges] of pieces) {
    test(`of ${name} strays less than 0.02 mm, out and in`, () => {
      for (const by of [6, 6.35, 10, -2, -6]) expect(strays(edges, by, 'round')).toBeLessThan(0.02);
    });
  }

  test('of right-angled pieces has the same mitres', () => {
    for (const by of [6, 10]) {
      // A polygon's last chord leaves an arc's direction by a little: the mitre of a finer one lies truer.
      expect(strays(ringSector(349.25, 412.75, 0.8), by, 'mitred', 2e-5)).toBeLessThan(0.02);
      expect(strays(rectangle(200, 16), by, 'mitred')).toBeLessThan(0.001);
    }
  });
});

describe('the cut line of any outline, judged by clipper2-ts', () => {
  const widths = fc.constantFrom(3, 6, 12, 20, -3, -6, -12, -25);

  test('strays less than 0.02 mm, with corners rounded', () => {
    fc.assert(
      fc.property(anyEdges, widths, (edges, by) => {
        fc.pre(selfCrossings(edges.flat()).length === 0 && areaOf(edges.flat()) > 100);
        expect(strays(edges, by, 'round', 5e-4)).toBeLessThan(0.02);
      }),
      { numRuns: 25 },
    );
  });

  test('has the same mitres on polygons whose corners are not too sharp', () => {
    const corners = fc.array(fc.integer({ min: 60, max: 110 }), { minLength: 6, maxLength: 12 });
    fc.assert(
      fc.property(corners, widths, (reach, by) => {
        const points = reach.map((r, i) => {
          const angle = (2 * Math.PI * i) / reach.length;
          return point(r * Math.cos(angle), r * Math.sin(angle));
        });
        fc.pre(points.every((p, i) => turn(points.at(i - 1)!, p, points[(i + 1) % points.length]!) < 1.9));
        const edges = polygon(points).map((side) => [side]);
        // A corner so flat that its tip stands out by 0.0025 mm at most is cut straight across.
        expect(strays(edges, by, 'mitred')).toBeLessThan(0.003);
      }),
      { numRuns: 100 },
    );
  });
});

/** How far a polygon turns at a corner, radians, either way. */
const turn = (p: Point, q: Point, r: Point): number => {
  const [ax, ay, bx, by] = [q.x - p.x, q.y - p.y, r.x - q.x, r.y - q.y];
  return Math.abs(Math.atan2(ax * by - ay * bx, ax * bx + ay * by));
};
