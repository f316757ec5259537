import { Bezier } from 'bezier-js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fitPath } from '../../src/geometry/fit.ts';
import { flatten } from '../../src/geometry/flatten.ts';
import { pathLength } from '../../src/geometry/measure.ts';
import type { Cubic, Path } from '../../src/geometry/path.ts';
import { distance, type Point, point } from '../../src/geometry/point.ts';
import { splineThrough } from '../../src/geometry/spline.ts';

const asBezier = ({ from, c1, c2, to }: Cubic) => new Bezier([from, c1, c2, to]);

/** Distance from a point to a path of cubics, by the chords of bezier-js's own table of 400 points a curve. */
const distanceTo = (path: Path, p: Point): number =>
  Math.min(
    ...path.flatMap((c) => {
      const table = c.kind === 'cubic' ? asBezier(c).getLUT(400) : [];
      return table.slice(1).map((q, i) => toChord(p, table[i]!, q));
    }),
  );

const toChord = (p: Point, a: Point, b: Point): number => {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const t = Math.min(1, Math.max(0, ((p.x - a.x) * dx + (p.y - a.y) * dy) / (dx * dx + dy * dy || 1)));
  return Math.hypot(p.x - a.x - t * dx, p.y - a.y - t * dy);
};

/** Signed curvature from bezier-js's two derivatives. */
const curvature = (c: Cubic, t: number): number => {
  // bezier-js has it, its published types do not.
  const bezier = asBezier(c) as Bezier & { dderivative(t: number): Point };
  const [d, dd] = [bezier.derivative(t), bezier.dderivative(t)];
  return (d.x * dd.y - d.y * dd.x) / Math.hypot(d.x, d.y) ** 3;
};

const arcPoints = (r: number, sweep: number, n: number) =>
  Array.from({ length: n + 1 }, (_, i) =>
    point(r * Math.cos((sweep * i) / n), r * Math.sin((sweep * i) / n)),
  );

describe('fitting curves to points', () => {
  test('keeps an arc of points within 0.02 mm, judged by bezier-js, and as long as the arc', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 20, max: 400, noNaN: true }),
        fc.double({ min: 0.2, max: 3, noNaN: true }),
        (r, sweep) => {
          // Points 2 mm apart, as the drafting rules sample their curves.
          const path = fitPath(arcPoints(r, sweep, Math.ceil((r * sweep) / 2)));
          for (const p of arcPoints(r, sweep, 37)) expect(distanceTo(path, p)).toBeLessThan(0.02);
          expect(Math.abs(pathLength(path) - r * sweep)).toBeLessThan(0.02);
        },
      ),
      { numRuns: 30 },
    );
  });

  test('goes through both end points in the directions asked for', () => {
    const points = arcPoints(90, 1.5, 80);
    const path = fitPath(points, { start: point(0, 1) });
    const [first] = path;
    expect(first!.from).toEqual(points[0]);
    expect(path.at(-1)!.to).toEqual(points.at(-1));
    expect(first?.kind === 'cubic' && Math.abs(first.c1.x - first.from.x)).toBeLessThan(1e-9);
  });

  test('turns smoothly where two cubics meet', () => {
    const wave = Array.from({ length: 200 }, (_, i) => point(i, 25 * Math.sin(i / 20)));
    const path = fitPath(wave) as readonly Cubic[];
    expect(path.length).toBeGreaterThan(2);
    for (let i = 1; i < path.length; i++) {
      const [before, after] = [asBezier(path[i - 1]!).derivative(1), asBezier(path[i]!).derivative(0)];
      const turn = Math.atan2(
        before.x * after.y - before.y * after.x,
        before.x * after.x + before.y * after.y,
      );
      expect(Math.abs(turn)).toBeLessThan(1e-9);
    }
  });

  test('keeps its curves from running away where straight runs go over into a tight bend', () => {
    const rows = [2, 3, 6].flatMap((r) => [1, 1.57, 2.5].map((sweep) => ({ r, sweep })));
    for (const { r, sweep } of rows) {
      const run = [1, 2, 3, 4].map((i) => i * 5);
      const before = run.map((s) => point(s - 25, 0));
      const bend = arcPoints(r, sweep, 8).map((p) => point(p.y, r - p.x));
      const end = bend.at(-1)!;
      const after = run.map((s) => point(end.x + s * Math.cos(sweep), end.y + s * Math.sin(sweep)));
      // Beside a bend few points leave a curve some freedom, but never a loop.
      const length = 20 + r * sweep + 20;
      expect(Math.abs(pathLength(fitPath([...before, ...bend, ...after])) - length)).toBeLessThan(1);
    }
  });
});

describe('a spline through a row of widths', () => {
  const row = [point(0, -60), point(18, -57.5), point(36, -48), point(54, -30), point(80, 8)];

  test('goes through every point that the ruler gave', () => {
    const path = splineThrough(row, point(1, 0));
    expect([path[0]!.from, ...path.map((c) => c.to)]).toEqual(row);
  });

  test('bends smoothly: its curvature has no jump at any point', () => {
    const path = splineThrough(row, point(1, 0)) as readonly Cubic[];
    for (let i = 1; i < path.length; i++) {
      const [before, after] = [curvature(path[i - 1]!, 1), curvature(path[i]!, 0)];
      expect(Math.abs(before - after)).toBeLessThan(1e-9);
    }
  });

  test('of points on a circle stays near the circle', () => {
    const points = arcPoints(100, 1.6, 8);
    for (const p of flatten(splineThrough(points, point(0, 1)), 0.01)) {
      expect(Math.abs(distance(p, point(0, 0)) - 100)).toBeLessThan(0.25);
    }
  });
});
