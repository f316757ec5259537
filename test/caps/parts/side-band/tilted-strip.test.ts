import { describe, expect, test } from 'vitest';
import { halfShape, quarterShape, wholeShape } from '../../../../src/caps/parts/side-band/side-band-shape.ts';
import { dropOf, reachOf, sideSlope } from '../../../../src/caps/parts/side-band/side-slope.ts';
import { tiltedEdges } from '../../../../src/caps/parts/side-band/tilted-strip.ts';
import { areaOf } from '../../../../src/geometry/area.ts';
import { flatten } from '../../../../src/geometry/flatten.ts';
import { pathLength, pointAt } from '../../../../src/geometry/measure.ts';
import { ovalOfGirth } from '../../../../src/geometry/oval.ts';
import { distance } from '../../../../src/geometry/point.ts';
import { ringSector } from '../../../../src/geometry/ring-sector.ts';

describe('a side band under a tilted rim', () => {
  // The handbooks' flaring work (see ringSector) at tilt 0: the general way must come to the same.
  test.each([
    [560, 660, 63.5],
    [472, 792, 110],
    [640, 640, 45],
    [600, 560, 30],
  ])(
    'is the cone’s ring sector within 0.02 mm where the rim is level: %d to %d, %d high',
    (lower, rim, height) => {
      const slope = sideSlope(ovalOfGirth(rim, 1), lower, height);
      const cone = ringSector(lower, rim, height);
      const { top, bottom } = tiltedEdges(slope, { from: 'front', quarters: 2 });
      for (const [edge, ring, girth] of [
        [top, cone.top, rim],
        [bottom, cone.bottom, lower],
      ] as const) {
        expect(Math.abs(pathLength(edge) - girth / 2)).toBeLessThan(0.005);
        for (const part of [0, 0.1, 0.25, 0.5, 0.75, 0.9, 1]) {
          const along = (part * girth) / 2;
          // The ring's top runs from right to left, its bottom from left to right; its middle is the centre front.
          const there = pointAt(ring, ring === cone.top ? girth / 2 - along : girth / 2 + along);
          expect(distance(pointAt(edge, along), there)).toBeLessThan(0.02);
        }
      }
    },
  );

  test('keeps the girths of rim and opening in each quarter, however it is tilted', () => {
    for (const ratio of [0.72, 0.85, 1]) {
      for (const tilt of [4, 30, 80]) {
        const slope = sideSlope(ovalOfGirth(690, ratio), 560, 90, tilt);
        for (const end of ['front', 'back'] as const) {
          const { top, bottom } = tiltedEdges(slope, { from: end, quarters: 1 });
          expect(Math.abs(pathLength(top) - 690 / 4)).toBeLessThan(0.01);
          expect(Math.abs(pathLength(bottom) - 560 / 4)).toBeLessThan(0.01);
        }
      }
    }
  });

  test('is as high at the sides as wished, higher in front by one leg of a right triangle and lower behind', () => {
    const slope = sideSlope(ovalOfGirth(690, 0.9), 560, 70, 40);
    const [reach, drop] = [reachOf(slope), dropOf(slope)];
    const [front, back] = [quarterShape(slope, 'front'), quarterShape(slope, 'back')];
    expect(pathLength(front.right)).toBeCloseTo(70, 3);
    expect(pathLength(back.right)).toBeCloseTo(70, 3);
    expect(pathLength(front.left)).toBeCloseTo(Math.hypot(reach, drop + 20), 6);
    expect(pathLength(back.left)).toBeCloseTo(Math.hypot(reach, drop - 20), 6);
  });

  test('has halves that are two quarters to a side, exactly symmetric', () => {
    const slope = sideSlope(ovalOfGirth(690, 0.9), 560, 70, 40);
    for (const end of ['front', 'back'] as const) {
      const [half, quarter] = [halfShape(slope, end), quarterShape(slope, end)];
      expect(pathLength(half.top)).toBeCloseTo(2 * pathLength(quarter.top), 6);
      const points = flatten(half.top, 0.05);
      for (const p of points) expect(points.some((q) => distance(q, { x: -p.x, y: p.y }) < 1e-9)).toBe(true);
    }
  });

  test('in one piece is as large as its four quarters, and as long round', () => {
    const slope = sideSlope(ovalOfGirth(690, 0.9), 560, 70, 40);
    const whole = wholeShape(slope);
    const area = ({ bottom, right, top, left }: typeof whole) =>
      areaOf([...bottom, ...right, ...top, ...left]);
    const quarters = area(quarterShape(slope, 'front')) + area(quarterShape(slope, 'back'));
    expect(area(whole) / (2 * quarters)).toBeCloseTo(1, 4);
    expect(Math.abs(pathLength(whole.top) - 690)).toBeLessThan(0.02);
    expect(Math.abs(pathLength(whole.bottom) - 560)).toBeLessThan(0.02);
  });
});
