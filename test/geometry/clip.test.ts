import { areaPathsD, FillRule, intersectD } from 'clipper2-ts';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Box } from '../../src/geometry/box.ts';
import { clipToBox, cutPolygon, polygonInBox } from '../../src/geometry/clip.ts';
import { flatten } from '../../src/geometry/flatten.ts';
import { pathLength } from '../../src/geometry/measure.ts';
import { circle, isClosed, line, pathEnd, pathStart, polygon } from '../../src/geometry/path.ts';
import { distance, ORIGIN, point } from '../../src/geometry/point.ts';
import { expectNear, expectSamePoint } from './near.ts';
import { anyEdges, anyShare } from './random-curves.ts';

const box = (x0: number, y0: number, x1: number, y1: number): Box => ({
  min: point(x0, y0),
  max: point(x1, y1),
});

describe('clipping a path to a sheet', () => {
  test('leaves what lies on the sheet as it is, and nothing of what lies off it', () => {
    const square = polygon([ORIGIN, point(10, 0), point(10, 10), point(0, 10)]);
    expect(clipToBox(square, box(-1, -1, 11, 11))).toEqual([square]);
    expect(clipToBox(square, box(20, 0, 30, 10))).toEqual([]);
  });

  test('parts a line exactly on the edges', () => {
    expect(clipToBox([line(point(-10, 5), point(30, 5))], box(0, 0, 20, 20))).toEqual([
      [line(point(0, 5), point(20, 5))],
    ]);
  });

  test('keeps a line on the very edge, and drops a touch from outside', () => {
    expect(clipToBox([line(point(2, 0), point(8, 0))], box(0, 0, 10, 10))).toHaveLength(1);
    expect(clipToBox([line(point(-5, 5), point(5, -5))], box(0, 0, 10, 10))).toEqual([]);
  });

  test('keeps the arcs of a circle that bulges over all four edges', () => {
    const parts = clipToBox(circle(ORIGIN, 10), box(-9, -9, 9, 9));
    expect(parts).toHaveLength(4);
    expect(parts.flat().every(({ kind }) => kind === 'arc')).toBe(true);
    // Each edge cuts off two acos(0.9) of the turn.
    expectNear(pathLength(parts.flat()), 10 * (2 * Math.PI - 8 * Math.acos(0.9)), 1e-9);
  });

  test('does not cut a closed path at its start when it runs on inside', () => {
    const parts = clipToBox(circle(ORIGIN, 10), box(-5, -20, 20, 20));
    expect(parts).toHaveLength(1);
    expectSamePoint(pathStart(parts[0]!), point(-5, -Math.sqrt(75)));
    expectSamePoint(pathEnd(parts[0]!), point(-5, Math.sqrt(75)));
  });

  test('never loses or doubles any of an outline over a grid of sheets', () => {
    fc.assert(
      fc.property(
        anyEdges,
        anyShare.map((share) => 40 * share - 20),
        (edges, shift) => {
          const outline = edges.flat();
          const sheets = [-2, -1, 0, 1].flatMap((i) =>
            [-2, -1, 0, 1].map((j) => box(i * 80 + shift, j * 90, (i + 1) * 80 + shift, (j + 1) * 90)),
          );
          const parts = sheets.flatMap((sheet) => clipToBox(outline, sheet).map((part) => ({ sheet, part })));
          const sum = parts.reduce((total, { part }) => total + pathLength(part), 0);
          expectNear(sum, pathLength(outline), 1e-5);
          for (const { sheet, part } of parts) {
            for (const { x, y } of flatten(part, 0.1)) {
              expect(x > sheet.min.x - 1e-5 && x < sheet.max.x + 1e-5).toBe(true);
              expect(y > sheet.min.y - 1e-5 && y < sheet.max.y + 1e-5).toBe(true);
            }
            part.slice(1).forEach((curve, i) => {
              expect(distance(part[i]!.to, curve.from)).toBeLessThan(1e-9);
            });
          }
          const kinds = new Set(outline.map(({ kind }) => kind));
          expect(parts.flatMap(({ part }) => part).every(({ kind }) => kinds.has(kind))).toBe(true);
        },
      ),
      { numRuns: 100 },
    );
  });

  test('keeps a whole outline closed', () => {
    const [only] = clipToBox(circle(ORIGIN, 10), box(-10, -10, 10, 10));
    expect(isClosed(only!)).toBe(true);
    expect(only).toHaveLength(1);
  });
});

describe('cutting a polygon to a sheet', () => {
  const corner = fc.tuple(fc.integer({ min: -20, max: 40 }), fc.integer({ min: -20, max: 40 }));

  test('leaves as much of it as an independent library does', () => {
    const sheet = box(0, 0, 20, 30);
    const frame = [
      { x: 0, y: 0 },
      { x: 20, y: 0 },
      { x: 20, y: 30 },
      { x: 0, y: 30 },
    ];
    fc.assert(
      fc.property(corner, corner, corner, (a, b, c) => {
        const corners = [a, b, c].map(([x, y]) => point(x, y));
        const left = polygonInBox(corners, sheet).map(({ x, y }) => ({ x, y }));
        const theirs = intersectD([corners.map(({ x, y }) => ({ x, y }))], [frame], FillRule.NonZero, 6);
        expectNear(Math.abs(areaPathsD([left])), Math.abs(areaPathsD(theirs)), 1e-3);
      }),
    );
  });

  test('leaves what lies to one side of a line, the line included', () => {
    const square = [point(-10, 0), point(10, 0), point(10, 10), point(-10, 10)];
    const right = cutPolygon(square, ({ x }) => x);
    expect(new Set(right.map(({ x, y }) => `${x + 0},${y}`))).toEqual(
      new Set(['0,0', '10,0', '10,10', '0,10']),
    );
    expect(cutPolygon(square, ({ x }) => x - 20)).toEqual([]);
  });
});
