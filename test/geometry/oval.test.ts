import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pathLength } from '../../src/geometry/measure.ts';
import {
  anglesFromFront,
  ovalArc,
  ovalGirth,
  ovalNormal,
  ovalOfGirth,
  ovalPath,
  ovalPoint,
} from '../../src/geometry/oval.ts';

const girth = fc.double({ min: 300, max: 1200, noNaN: true });
const ratio = fc.double({ min: 0.6, max: 1, noNaN: true });

describe('an oval', () => {
  test('of a wished girth has that girth, whatever its ratio', () => {
    fc.assert(
      fc.property(girth, ratio, (g, k) => {
        const oval = ovalOfGirth(g, k);
        expect(Math.abs(ovalGirth(oval) - g)).toBeLessThan(1e-9 * g);
        expect(oval.halfBreadth / oval.halfLength).toBeCloseTo(k, 12);
      }),
    );
  });

  test('is as long round as its arcs added up', () => {
    fc.assert(
      fc.property(girth, ratio, fc.double({ min: 0, max: 6, noNaN: true }), (g, k, split) => {
        const oval = ovalOfGirth(g, k);
        const sum = ovalArc(oval, 0, split) + ovalArc(oval, split, 2 * Math.PI);
        expect(Math.abs(sum - g)).toBeLessThan(1e-6);
      }),
    );
  });

  test('finds the point at a distance from the centre front', () => {
    fc.assert(
      fc.property(girth, ratio, (g, k) => {
        const oval = ovalOfGirth(g, k);
        const [side, back] = anglesFromFront(oval, [g / 4, g / 2]);
        expect(side).toBeCloseTo(0, 8);
        expect(back).toBeCloseTo(-Math.PI / 2, 8);
      }),
    );
  });

  test('is drawn within a hundredth of a millimetre of the true curve, and as long', () => {
    fc.assert(
      fc.property(girth, ratio, (g, k) => {
        const oval = ovalOfGirth(g, k);
        const path = ovalPath(oval, -Math.PI / 2);
        expect(Math.abs(pathLength(path) - g)).toBeLessThan(0.01);
      }),
    );
  });

  test('has its normal square to the curve, pointing out', () => {
    fc.assert(
      fc.property(girth, ratio, fc.double({ min: 0, max: 6, noNaN: true }), (g, k, t) => {
        const oval = ovalOfGirth(g, k);
        const n = ovalNormal(oval, t);
        const [p, q] = [ovalPoint(oval, t - 1e-6), ovalPoint(oval, t + 1e-6)];
        const chord = Math.hypot(q.x - p.x, q.y - p.y);
        expect(Math.abs((q.x - p.x) * n.x + (q.y - p.y) * n.y) / chord).toBeLessThan(1e-6);
        expect(n.x * p.x + n.y * p.y).toBeGreaterThan(0);
      }),
    );
  });
});
