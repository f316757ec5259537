// Cubics judged by bezier-js 6 (MIT, on npm), which was written without sight of this project.
import { Bezier } from 'bezier-js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boundsOf } from '../../src/geometry/bounds.ts';
import { curveAt, curvePart, directionAt } from '../../src/geometry/curve.ts';
import { flatten } from '../../src/geometry/flatten.ts';
import { crossings } from '../../src/geometry/intersect.ts';
import { curveLength, pathLength, pointAt, stretch } from '../../src/geometry/measure.ts';
import { parallel } from '../../src/geometry/parallel.ts';
import type { Cubic } from '../../src/geometry/path.ts';
import { distance, type Point } from '../../src/geometry/point.ts';
import { OFFSET } from '../../src/geometry/tolerance.ts';
import { toChord } from '../geometry/deviation.ts';
import { expectNear, expectSamePoint } from '../geometry/near.ts';
import { anyCubic, anyLine, anyShare } from '../geometry/random-curves.ts';

// bezier-js keeps the points it is given and marks them: it gets its own.
const asBezier = ({ from, c1, c2, to }: Cubic) =>
  new Bezier([from, c1, c2, to].map(({ x, y }) => ({ x, y })));

/** The length by bezier-js's fixed rule of 24 points on each of many parts. */
const lengthOf = (c: Cubic, parts: number): number => {
  const bezier = asBezier(c);
  return Array.from({ length: parts }, (_, i) => bezier.split(i / parts, (i + 1) / parts).length()).reduce(
    (sum, part) => sum + part,
    0,
  );
};

/** How sharply a curve bends, 1/mm. bezier-js has the second derivative, its published types do not. */
const curvature = (bezier: Bezier, t: number): number => {
  const [v, a] = [
    bezier.derivative(t),
    (bezier as Bezier & { dderivative(t: number): Point }).dderivative(t),
  ];
  return Math.abs(v.x * a.y - v.y * a.x) / Math.hypot(v.x, v.y) ** 3;
};

/** Whether the velocity all but stops on the way: there bezier-js's fixed rule and its steps cannot judge. */
const allButStops = (c: Cubic): boolean => {
  const bezier = asBezier(c);
  const speeds = Array.from({ length: 1001 }, (_, i) => {
    const { x, y } = bezier.derivative(i / 1000);
    return Math.hypot(x, y);
  });
  return Math.min(...speeds) < 0.05 * Math.max(...speeds);
};

// A failure is told at once: making it smaller takes minutes, and says little of curves.
fc.configureGlobal({ endOnFailure: true });

describe('a cubic, judged by bezier-js', () => {
  test('is as long to a millionth of a millimetre', () => {
    fc.assert(
      fc.property(anyCubic, (c) => {
        fc.pre(!allButStops(c));
        const [fine, finer] = [lengthOf(c, 32), lengthOf(c, 64)];
        // At a cusp the fixed rule itself is unsure; then it cannot judge.
        fc.pre(Math.abs(fine - finer) < 2e-7);
        expectNear(curveLength(c), finer, 1e-6);
      }),
      { numRuns: 200 },
    );
  });

  // Where it does stop the closed form judges: on a straight line the way is the sum of its runs to and fro.
  test('that doubles back on a line is as long as its runs there and back', () => {
    const ordinate = fc.double({ min: -100, max: 100, noNaN: true });
    fc.assert(
      fc.property(ordinate, ordinate, ordinate, ordinate, (a, b, c, d) => {
        const y = (t: number) =>
          (1 - t) ** 3 * a + 3 * (1 - t) ** 2 * t * b + 3 * (1 - t) * t ** 2 * c + t ** 3 * d;
        const [p, q, r] = [d - a + 3 * (b - c), 2 * (a - 2 * b + c), b - a];
        fc.pre(Math.abs(p) > 1);
        const root = Math.sqrt(Math.max(0, q * q - 4 * p * r));
        const turns = [(-q - root) / (2 * p), (-q + root) / (2 * p)].filter((t) => t > 0 && t < 1);
        const stops = [0, ...turns.sort((s, t) => s - t), 1].map(y);
        const runs = stops.slice(1).reduce((sum, stop, i) => sum + Math.abs(stop - stops[i]!), 0);
        const [from, c1, c2, to] = [a, b, c, d].map((at) => ({ x: 0, y: at }));
        expectNear(curveLength({ kind: 'cubic', from: from!, c1: c1!, c2: c2!, to: to! }), runs, 1e-6);
      }),
      { numRuns: 200 },
    );
  });

  test('has the same points and directions', () => {
    fc.assert(
      fc.property(anyCubic, anyShare, (c, t) => {
        const bezier = asBezier(c);
        expectSamePoint(curveAt(c, t), bezier.get(t), 1e-9);
        const d = bezier.derivative(t);
        const speed = Math.hypot(d.x, d.y);
        fc.pre(speed > 1);
        expectSamePoint(directionAt(c, t), { x: d.x / speed, y: d.y / speed }, 1e-9);
      }),
      { numRuns: 200 },
    );
  });

  test('is parted into the same parts', () => {
    fc.assert(
      fc.property(anyCubic, anyShare, anyShare, (c, a, b) => {
        fc.pre(Math.abs(a - b) > 1e-3);
        const [t0, t1] = [Math.min(a, b), Math.max(a, b)];
        const mine = curvePart(c, t0, t1) as Cubic;
        const { points } = asBezier(c).split(t0, t1);
        [mine.from, mine.c1, mine.c2, mine.to].forEach((p, i) => {
          expectSamePoint(p, points[i]!, 1e-9);
        });
      }),
      { numRuns: 200 },
    );
  });

  test('lies where a distance along it says', () => {
    fc.assert(
      fc.property(anyCubic, anyShare, (c, t) => {
        fc.pre(t > 0.01);
        const upTo = curvePart(c, 0, t) as Cubic;
        const [fine, finer] = [lengthOf(upTo, 16), lengthOf(upTo, 32)];
        fc.pre(Math.abs(fine - finer) < 2e-7);
        expectSamePoint(pointAt([c], finer), asBezier(c).get(t), 2e-6);
        expectNear(pathLength(stretch([c], 0, finer)), finer, 1e-6);
      }),
      { numRuns: 100 },
    );
  });

  test('has the same bounds', () => {
    fc.assert(
      fc.property(anyCubic, (c) => {
        // Where the velocity is all but linear in t, bezier-js divides by what rounding left.
        const bend = (p: number, q: number, r: number, s: number) => Math.abs(s - 3 * r + 3 * q - p);
        fc.pre(
          bend(c.from.x, c.c1.x, c.c2.x, c.to.x) > 1e-3 && bend(c.from.y, c.c1.y, c.c2.y, c.to.y) > 1e-3,
        );
        const { min, max } = boundsOf([c]);
        const { x, y } = asBezier(c).bbox();
        expectSamePoint(min, { x: x.min, y: y.min }, 1e-6);
        expectSamePoint(max, { x: x.max, y: y.max }, 1e-6);
      }),
      { numRuns: 300 },
    );
  });
});

describe('crossings, judged by bezier-js', () => {
  const nearest = (p: Point, points: readonly Point[]): number =>
    Math.min(...points.map((q) => distance(p, q)));

  test('of a cubic with a line are the same', () => {
    fc.assert(
      fc.property(anyCubic, anyLine, (c, l) => {
        const theirs = asBezier(c)
          .lineIntersects({ p1: l.from, p2: l.to })
          .map((t) => asBezier(c).get(t));
        const mine = crossings([c], [l]).map(({ point }) => point);
        // Crossings at the very ends count for one and not for the other.
        const ends = [c.from, c.to, l.from, l.to];
        for (const p of theirs) if (nearest(p, ends) > 1e-3) expect(nearest(p, mine)).toBeLessThan(1e-4);
        for (const p of mine) if (nearest(p, ends) > 1e-3) expect(nearest(p, theirs)).toBeLessThan(1e-4);
      }),
      { numRuns: 300 },
    );
  });

  test('of two cubics that it finds are found here too', () => {
    fc.assert(
      fc.property(anyCubic, anyCubic, (a, b) => {
        const [first, second] = [asBezier(a), asBezier(b)];
        const mine = crossings([a], [b]).map(({ point }) => point);
        for (const pair of first.intersects(second, 0.05)) {
          const [t, u] = String(pair).split('/').map(Number) as [number, number];
          const theirs = sharpened(first, second, t, u);
          if (theirs) expect(nearest(theirs, mine)).toBeLessThan(1e-5);
        }
      }),
      { numRuns: 200 },
    );
  });
});

/**
 * bezier-js takes boxes that meet, 0.05 mm wide, for a crossing. From there Newton's method on its own points and
 * derivatives leads to the crossing itself, or nowhere, where the curves only pass close by or at a graze.
 */
const sharpened = (a: Bezier, b: Bezier, t: number, u: number): Point | undefined => {
  for (let i = 0; i < 8; i++) {
    const [p, q, v, w] = [a.get(t), b.get(u), a.derivative(t), b.derivative(u)];
    const turn = v.x * w.y - v.y * w.x;
    const gap = { x: q.x - p.x, y: q.y - p.y };
    t += (gap.x * w.y - gap.y * w.x) / turn;
    u += (gap.x * v.y - gap.y * v.x) / turn;
  }
  const met = t > 0 && t < 1 && u > 0 && u < 1 && distance(a.get(t), b.get(u)) < 1e-9;
  return met ? a.get(t) : undefined;
};

describe('the parallel of a cubic, judged by bezier-js', () => {
  test('stands off by the width, where the curve bends gently', () => {
    fc.assert(
      fc.property(anyCubic, fc.constantFrom(6, -6, 10), (c, by) => {
        const bezier = asBezier(c);
        // Asked closely: a cubic that all but doubles back does so within a thousandth of its parameter.
        const bends = Array.from({ length: 4001 }, (_, i) => curvature(bezier, i / 4000));
        fc.pre(Math.max(...bends) * Math.abs(by) < 0.7);
        // bezier-js's own normals lead to points of the true parallel; they stand on the left.
        const truth = Array.from({ length: 801 }, (_, i) => {
          const [at, n] = [bezier.get(i / 800), bezier.normal(i / 800)];
          return { x: at.x - by * n.x, y: at.y - by * n.y };
        });
        const mine = flatten(
          parallel(c, by).map(({ curve }) => curve),
          1e-4,
        );
        const astray = (p: Point, line: readonly Point[]) =>
          Math.min(...line.slice(1).map((q, i) => toChord(p, line[i]!, q)));
        for (let i = 0; i <= 800; i += 20) expect(astray(truth[i]!, mine)).toBeLessThan(OFFSET + 1e-3);
        for (let i = 0; i < mine.length; i += 7) expect(astray(mine[i]!, truth)).toBeLessThan(OFFSET + 1e-3);
      }),
      { numRuns: 100 },
    );
  });
});
