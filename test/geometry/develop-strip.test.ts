import { describe, expect, test } from 'vitest';
import { directionAt } from '../../src/geometry/curve.ts';
import { developMirrored } from '../../src/geometry/develop-mirrored.ts';
import { type DevelopmentWish, developStrip } from '../../src/geometry/develop-strip.ts';
import { fitEdge } from '../../src/geometry/fit-edge.ts';
import { pathLength } from '../../src/geometry/measure.ts';
import { distance, dot, heading, type Point, point, scale } from '../../src/geometry/point.ts';
import { distance3, type Point3, point3 } from '../../src/geometry/space.ts';
import { triangulateStrip } from '../../src/geometry/triangulate-strip.ts';
import { expectNear, expectSamePoint } from './near.ts';
import { polylineLength, sampleCurve } from './sample-curve.ts';
import { type SpaceCurve, splineInSpace } from './space-curve.ts';
import { laidOut, polar, row, straying } from './space-rails.ts';

interface Case {
  readonly left: SpaceCurve;
  readonly right: SpaceCurve;
  readonly flatLeft: (t: number) => Point;
  readonly flatRight: (t: number) => Point;
}

/**
 * Develops two rails sampled at different chords, and measures how far both edges stray from the true development.
 */
const strayed = (
  { left, right, flatLeft, flatRight }: Case,
  chords: readonly [number, number],
  wish?: DevelopmentWish,
) => {
  const strip = triangulateStrip(sampleCurve(left, chords[0]), sampleCurve(right, chords[1]));
  const made = developStrip(strip, wish);
  const [p, q] = [flatLeft(0), flatRight(0)];
  return Math.max(
    straying(made.left, laidOut(row(1200, flatLeft), p, q)),
    straying(made.right, laidOut(row(1200, flatRight), p, q)),
  );
};

const frustum = (r: number, R: number, h: number, sweep: number): Case => {
  const slant = Math.hypot(R - r, h);
  const sine = (R - r) / slant;
  const flat = (radius: number) => (t: number) => scale(heading(sweep * sine * t), radius / sine);
  return {
    left: (t) => polar(r, sweep * t),
    right: (t) => polar(R, sweep * t, h),
    flatLeft: flat(r),
    flatRight: flat(R),
  };
};

const cutCylinder = (r: number, tilt: number, height: number, sweep: number): Case => {
  const rise = (t: number) => height + r * Math.tan(tilt) * Math.cos(sweep * t);
  return {
    left: (t) => polar(r, sweep * t),
    right: (t) => polar(r, sweep * t, rise(t)),
    flatLeft: (t) => point(0, r * sweep * t),
    flatRight: (t) => point(rise(t), r * sweep * t),
  };
};

/**
 * Strip of the tangents to a helix (radius 60, rise 45 a radian) between 30 and 110 mm along them; its edge of
 * regression rolls out to a circle of radius 75²/60.
 */
const helixTangents: Case = (() => {
  const speed = Math.hypot(60, 45);
  const on = (along: number) => (t: number) =>
    point3(
      60 * Math.cos(2 * t) - (along * 60 * Math.sin(2 * t)) / speed,
      60 * Math.sin(2 * t) + (along * 60 * Math.cos(2 * t)) / speed,
      90 * t + (along * 45) / speed,
    );
  const radius = speed ** 2 / 60;
  const flat = (along: number) => (t: number) => {
    const turn = (speed * 2 * t) / radius;
    const [c, s] = [Math.cos(turn), Math.sin(turn)];
    return point(radius * c - along * s, radius * s + along * c);
  };
  return { left: on(30), right: on(110), flatLeft: flat(30), flatRight: flat(110) };
})();

const ring: Case = {
  left: (t) => polar(70, 3 * t, 12),
  right: (t) => polar(130, 3 * t, 12),
  flatLeft: (t) => scale(heading(3 * t), 70),
  flatRight: (t) => scale(heading(3 * t), 130),
};

describe('the outline of a strip rolled flat', () => {
  test.each<[string, Case]>([
    ['a cone from radius 60 to 100', frustum(60, 100, 50, Math.PI)],
    ['a nearly upright cone all round', frustum(90, 92, 60, 2 * Math.PI)],
    ['a flat cone', frustum(88, 170, 15, Math.PI)],
    ['a cylinder cut 30° aslant, half round', cutCylinder(90, Math.PI / 6, 75, Math.PI)],
    ['a cylinder cut 10° aslant, all round', cutCylinder(95, Math.PI / 18, 55, 2 * Math.PI)],
    ['a tight cylinder cut 20° aslant', cutCylinder(30, Math.PI / 9, 35, Math.PI)],
    ['a tight cone', frustum(30, 42, 30, Math.PI)],
    ['the tangents of a helix', helixTangents],
    ['a plane ring', ring],
  ])('is within 0.02 mm of the true development for %s, its rails sampled unlike each other', (_, strip) => {
    expect(strayed(strip, [2, 2.9])).toBeLessThan(0.02);
    expect(strayed(strip, [4, 2.7])).toBeLessThan(0.02);
  });

  test('of a cone and of a plane ring is two arcs, of a cylinder’s level edge one line', () => {
    const kinds = ({ left, right }: Case) => {
      const made = developStrip(triangulateStrip(sampleCurve(left, 2), sampleCurve(right, 3)));
      return [made.left.map(({ kind }) => kind), made.right.map(({ kind }) => kind)];
    };
    expect(kinds(frustum(60, 100, 50, 3))).toEqual([['arc'], ['arc']]);
    expect(kinds(ring)).toEqual([['arc'], ['arc']]);
    expect(kinds(cutCylinder(90, 0.5, 75, 3))[0]).toEqual(['line']);
  });

  test('keeps the seam between two pieces one length, however differently they bend', () => {
    // The crown ring, once as the edge of a flat tip's ring and once as the rim of a side band.
    const rim = sampleCurve((t) => polar(105, Math.PI * t), 3.5);
    const tip = developStrip(
      triangulateStrip(
        rim,
        sampleCurve((t) => polar(60, Math.PI * t), 3),
      ),
    );
    const side = developStrip(
      triangulateStrip(
        rim,
        sampleCurve((t) => polar(89, Math.PI * t, -55), 3),
      ),
    );
    expectNear(pathLength(tip.left), Math.PI * 105, 0.005);
    expectNear(pathLength(side.left), Math.PI * 105, 0.005);
  });

  test('keeps that seam one length for pieces of free form, on samples as coarse as 5 mm', () => {
    // The top and the side of a crown, between them a seam from the brow to the back.
    const [brow, back] = [point3(20, 95, 10), point3(10, -100, 0)];
    const seam = splineInSpace([brow, point3(60, 70, 70), point3(65, 0, 95), point3(45, -70, 75), back]);
    const rim = splineInSpace([brow, point3(62, 56, 0), point3(78, -10, 0), point3(55, -72, 0), back]);
    const ridge = (t: number) => point3(-5 * Math.sin(t), seam(t).y, seam(t).z + 25 * Math.sin(Math.PI * t));
    const [along, length] = [sampleCurve(seam, 5), polylineLength(sampleCurve(seam, 0.05))];
    for (const other of [rim, ridge]) {
      const strip = triangulateStrip(along, sampleCurve(other, 4));
      expectNear(pathLength(developStrip(strip).left), length, 0.005);
    }
  });

  test('keeps stated corners sharp and its straight runs straight', () => {
    const arms: readonly Point3[] = [
      ...row(20, (t) => point3(0, 40 * t, 0)),
      ...row(20, (t) => point3(-30 * t, 40 + 40 * t, 0)).slice(1),
    ];
    const made = developStrip(
      triangulateStrip(
        arms,
        row(30, (t) => point3(50 + 10 * Math.sin(3 * t), 85 * t, 0)),
      ),
      { corners: { left: [20] } },
    );
    expect(made.left.map(({ kind }) => kind)).toEqual(['line', 'line']);
    expectNear(distance3(arms[20]!, arms[0]!), distance(made.left[0]!.to, made.left[0]!.from), 1e-9);
    expectNear(dot(directionAt(made.left[0]!, 1), directionAt(made.left[1]!, 0)), 0.8, 1e-9);
  });

  test('meets a ruling square where it is told to', () => {
    const oval = (reach: number, z: number) => (t: number) =>
      point3((95 + reach) * Math.sin(t * 1.5), (75 + reach) * Math.cos(t * 1.5), z);
    const made = developStrip(triangulateStrip(sampleCurve(oval(0, 0), 3), sampleCurve(oval(20, 40), 3)), {
      square: ['start'],
    });
    expectSamePoint(directionAt(made.left[0]!, 0), point(0, 1));
    expectSamePoint(directionAt(made.right[0]!, 0), point(0, 1));
  });
});

describe('a gore rolled flat about its middle', () => {
  const meridian = (side: number) => (t: number) =>
    polar(95 * Math.cos((t * Math.PI) / 2), (side * Math.PI) / 6, 95 * Math.sin((t * Math.PI) / 2));
  const gore = [sampleCurve(meridian(-1), 3), sampleCurve(meridian(1), 3)] as const;

  test('has edges that are exact mirror images and meet exactly in its apex', () => {
    const { left, right } = developMirrored(...gore);
    expect(left.length).toBe(right.length);
    for (const [i, curve] of right.entries()) {
      expect(left[i]!.from).toEqual(point(0 - curve.from.x, curve.from.y));
      expect(left[i]!.to).toEqual(point(0 - curve.to.x, curve.to.y));
    }
    expect(right.at(-1)!.to.x).toBe(0);
    expectSamePoint(right[0]!.from, point(95 / 2, 0), 1e-9);
  });

  test('has the shape that it has by itself', () => {
    const { flat } = developMirrored(...gore);
    const plain = developStrip(triangulateStrip(...gore)).flat;
    for (const [i, p] of flat.right.entries()) {
      expectNear(distance(p, flat.right[0]!), distance(plain.right[i]!, plain.right[0]!), 1e-3);
      expectNear(distance(p, flat.left[0]!), distance(plain.right[i]!, plain.left[0]!), 1e-3);
    }
  });

  test('is refused where the sides do not mirror each other', () => {
    const aslant = sampleCurve((t) => polar(95 * Math.cos(t), 0.5 + 0.1 * t, 95 * Math.sin(t) + 8), 3);
    const upright = sampleCurve((t) => polar(95 * Math.cos(t), -0.5, 95 * Math.sin(t)), 3);
    expect(() => developMirrored(upright, aslant)).toThrow(RangeError);
    expect(() => developMirrored(upright, upright.slice(1))).toThrow(RangeError);
  });
});

describe('fitting an edge', () => {
  test('takes a line where points are straight, an arc where they are round, cubics elsewhere', () => {
    const points = [
      ...row(10, (t) => point(50 * t, 0)),
      ...row(20, (t) => point(50 + 30 * Math.sin(t), 30 - 30 * Math.cos(t))).slice(1),
      ...row(20, (t) => point(50 + 30 * Math.sin(1) + 40 * t, 30 - 30 * Math.cos(1) + 9 * t ** 3)).slice(1),
    ];
    const edge = fitEdge(points, { corners: [10, 30] });
    expect(edge.map(({ kind }) => kind)).toEqual(['line', 'arc', ...edge.slice(2).map(() => 'cubic')]);
    expectNear(pathLength(edge.slice(1, 2)), 30, 1e-6);
    expect(edge.length).toBeGreaterThan(2);
    expect(() => fitEdge(points, { corners: [30, 10] })).toThrow(RangeError);
  });

  test('does not take points that go to and fro for a line or an arc', () => {
    const there = row(10, (t) => point(20 * t, 0));
    const edge = fitEdge([...there, ...row(15, (t) => point(20 - 30 * t, 0.001)).slice(1)]);
    expect(edge.every(({ kind }) => kind === 'cubic')).toBe(true);
  });
});
