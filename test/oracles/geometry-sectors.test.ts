// Sectors and flared strips from E. M. Longfield, "Sheet Metal Drafting", 1921: problem 19, and figures 30B and 30C.
import { describe, test } from 'vitest';
import { areaOf } from '../../src/geometry/area.ts';
import { curveLength, pathLength } from '../../src/geometry/measure.ts';
import { arc, line, type Path } from '../../src/geometry/path.ts';
import { ORIGIN, point } from '../../src/geometry/point.ts';
import { ringSector } from '../geometry/cap-outlines.ts';
import { expectNear } from '../geometry/near.ts';

const sector = (r: number, sweep: number): Path => {
  const bow = arc(ORIGIN, point(r, 0), sweep);
  return [line(ORIGIN, bow.from), bow, line(bow.to, ORIGIN)];
};

describe('the sheet-metal worker’s sectors', () => {
  test('an arc of 14 in at a radius of 7 in encloses 49 square inches, as the book prints', () => {
    const path = sector(7, 14 / 7);
    expectNear(curveLength(path[1]!), 14, 1e-12);
    expectNear(areaOf(path), 49, 1e-12);
  });

  test('a cone on a base of 4 in, 7 in high, unrolls to 98.900 degrees of a circle of 7.2801 in', () => {
    const slant = pathLength([line(point(2, 0), point(0, 7))]);
    expectNear(slant, 7.2801, 5e-5);
    // The sector whose arc is as long as the base is round.
    const degrees = ((4 * Math.PI) / slant) * (180 / Math.PI);
    expectNear(degrees, 98.9, 5e-4);
    expectNear(areaOf(sector(slant, (degrees * Math.PI) / 180)), Math.PI * 2 * slant, 1e-9);
  });

  test('cones on bases of 5 and 7 in with slants of 12 and 11 1/4 in have 94.248 and 123.700 square inches', () => {
    expectNear(areaOf(sector(12, (5 * Math.PI) / 12)), 94.248, 5e-4);
    expectNear(areaOf(sector(11.25, (7 * Math.PI) / 11.25)), 123.7, 5e-4);
  });

  test('the flared strips of 30B and 30C have 47.417, 84.298 and 66.268 square inches', () => {
    const flared = (upper: number, lower: number, slant: number): number => {
      const outer = (slant * lower) / (lower - upper);
      return areaOf(ringSector(outer - slant, outer, (Math.PI * lower) / outer).flat());
    };
    expectNear(flared(3, 6, Math.hypot(3, 1.5)), 47.417, 5e-4);
    expectNear(flared(4, 8, Math.hypot(4, 2)), 84.298, 5e-4);
    expectNear(flared(2.5, 3.125, 7.5), 66.268, 5e-4);
  });
});
