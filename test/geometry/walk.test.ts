import { describe, expect, test } from 'vitest';
import { curveAt, directionAt } from '../../src/geometry/curve.ts';
import { arc, circle, cubic, line, type Path, polygon } from '../../src/geometry/path.ts';
import { distance, norm, ORIGIN, point, subtract } from '../../src/geometry/point.ts';
import { arcToCubics, type Sink, walk } from '../../src/geometry/walk.ts';
import { expectSamePoint } from './near.ts';

const told = (path: Path): unknown[] => {
  const verbs: unknown[] = [];
  const tell =
    (verb: string) =>
    (...values: unknown[]): void => {
      verbs.push([verb, ...values]);
    };
  const sink: Sink = {
    moveTo: tell('moveTo'),
    lineTo: tell('lineTo'),
    arcTo: tell('arcTo'),
    cubicTo: tell('cubicTo'),
    close: tell('close'),
  };
  walk(path, sink);
  return verbs;
};

describe('walking a path', () => {
  test('says each curve with its own verb, and no close for an open path', () => {
    const bend = arc(point(10, 5), point(10, 0), Math.PI / 2);
    const path = [line(ORIGIN, point(10, 0)), bend, cubic(bend.to, point(15, 8), point(12, 9), point(11, 9))];
    expect(told(path)).toEqual([
      ['moveTo', ORIGIN],
      ['lineTo', point(10, 0)],
      ['arcTo', point(10, 5), 5, -Math.PI / 2, Math.PI / 2, bend.to],
      ['cubicTo', point(15, 8), point(12, 9), point(11, 9)],
    ]);
  });

  test('closes what is closed, once', () => {
    const verbs = told(polygon([ORIGIN, point(3, 0), point(0, 4)])) as [string][];
    expect(verbs.map(([verb]) => verb)).toEqual(['moveTo', 'lineTo', 'lineTo', 'lineTo', 'close']);
    expect(told(circle(ORIGIN, 5)).at(-1)).toEqual(['close']);
  });

  test('says nothing of no path', () => {
    expect(told([])).toEqual([]);
  });
});

describe('cubics in place of an arc', () => {
  test('stay within a ten-thousandth of a millimetre of it at every size and sweep, in one smooth chain', () => {
    for (const r of [0.5, 5, 105, 500, 5000]) {
      for (const sweep of [0.01, -0.5, Math.PI / 2, 3, -2 * Math.PI]) {
        const a = arc(point(7, -2), point(7 + r, -2), sweep);
        const cubics = arcToCubics(a);
        for (const c of cubics)
          for (let i = 0; i <= 40; i++)
            expect(Math.abs(distance(curveAt(c, i / 40), a.centre) - r)).toBeLessThan(1.0001e-4);
        expect(cubics[0]!.from).toBe(a.from);
        expect(cubics.at(-1)!.to).toBe(a.to);
        cubics.slice(1).forEach((c, i) => {
          expectSamePoint(c.from, cubics[i]!.to);
          expect(norm(subtract(directionAt(c, 0), directionAt(cubics[i]!, 1)))).toBeLessThan(1e-9);
        });
      }
    }
  });

  test('are few: a round crown takes 12 at most', () => {
    expect(arcToCubics(arc(ORIGIN, point(105, 0), 2 * Math.PI)).length).toBeLessThanOrEqual(12);
  });
});
