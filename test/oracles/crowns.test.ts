import { describe, expect, test } from 'vitest';
import { flatTop } from '../../src/caps/flat-top/flat-top.ts';
import { flatTopParameters } from '../../src/caps/flat-top/parameters.ts';
import { defaultsOf } from '../../src/caps/parameter.ts';
import { band } from '../../src/caps/parts/band/band.ts';
import { sideSlope } from '../../src/caps/parts/side-band/side-slope.ts';
import { tiltedEdges } from '../../src/caps/parts/side-band/tilted-strip.ts';
import { tip } from '../../src/caps/parts/tip/tip.ts';
import { boundsOf } from '../../src/geometry/bounds.ts';
import { boxWidth } from '../../src/geometry/box.ts';
import { flatten } from '../../src/geometry/flatten.ts';
import { pathLength } from '../../src/geometry/measure.ts';
import { ovalOfGirth } from '../../src/geometry/oval.ts';
import type { Path } from '../../src/geometry/path.ts';
import { cutLine } from '../../src/pattern/cut-line.ts';
import { halved } from '../../src/pattern/fold.ts';
import type { Allowances } from '../../src/pattern/pattern.ts';
import { checkSeams } from '../../src/pattern/seam-check.ts';
import { degrees, inches } from '../../src/units.ts';

const defaults = defaultsOf(flatTopParameters);
const capOf = (girth: number, values: Partial<typeof defaults>) =>
  flatTop.draft({ ...defaults, ease: 0, ...values }, { girth: inches(girth), ratio: 0.8, arc: inches(13) });
const allowances = (side: number): Allowances => ({
  crown: inches(1 / 2),
  gore: 0,
  side,
  band: 0,
  lower: 0,
  visorEdge: 0,
  brimEdge: 0,
  strapEdge: 0,
  hem: 0,
  none: 0,
});

/** The upper edge of a cylinder cut by a tilted plane, unrolled from its highest point: how far above the middle at a way along. */
const cutCylinder = (radius: number, tilt: number) => {
  // The rim is the cut's own ellipse, and its plan the cylinder's circle: the side band goes straight up from it.
  const long = radius / Math.cos(tilt);
  const slope = sideSlope(
    { halfLength: long, halfBreadth: radius },
    2 * Math.PI * radius,
    2 * radius,
    2 * long * Math.sin(tilt),
  );
  const { top, bottom } = tiltedEdges(slope, { from: 'front', quarters: 2 });
  return { top, bottom, slope, height: (at: number) => heightAt(top, at) - 2 * radius };
};

const heightAt = (path: Path, x: number): number => {
  const points = flatten(path, 0.0005);
  const i = Math.max(
    1,
    points.findIndex((p) => p.x >= x),
  );
  const [p, q] = [points[i - 1]!, points[i]!];
  return x >= points.at(-1)!.x ? points.at(-1)!.y : p.y + ((q.y - p.y) * (x - p.x)) / (q.x - p.x);
};

describe('a straight crown cut by a tilted plane', () => {
  // The parallel-line method (E. M. Longfield, Sheet Metal Drafting, 1921, ch. III; G. W. Kittredge, The New Metal Worker
  // Pattern Book): heights r · tan α · cos φ at equal steps round the circle; the figures are worked out from it for r = 4, α = 30°.
  test('unrolls to the handbooks’ heights, twelve to the round', () => {
    const { height } = cutCylinder(inches(4), degrees(30));
    const expected = [2.309, 2.0, 1.155, 0, -1.155, -2.0, -2.309];
    for (const [k, inch] of expected.entries()) {
      const along = (inches(4) * Math.PI * k) / 6;
      expect(Math.abs(height(along) - inches(inch))).toBeLessThan(0.02 + inches(0.0005));
    }
  });

  test('has a straight lower edge and a sine for its upper one, within 0.02 mm', () => {
    for (const alpha of [3, 10, 25]) {
      const [r, tilt] = [89, degrees(alpha)];
      const { top, bottom } = cutCylinder(r, tilt);
      for (const p of flatten(bottom, 0.001)) expect(Math.abs(p.y)).toBeLessThan(0.02);
      for (const p of flatten(top, 0.001))
        expect(Math.abs(p.y - 2 * r - r * Math.tan(tilt) * Math.cos(p.x / r))).toBeLessThan(0.02);
    }
  });

  test('rises and falls 16.75 mm each way on a radius of 95 mm dipped by 10°', () => {
    const { height } = cutCylinder(95, degrees(10));
    expect(height(0)).toBeCloseTo(16.75, 2);
    expect(height(95 * Math.PI)).toBeCloseTo(-16.75, 2);
  });
});

describe('gathered crowns of the millinery books', () => {
  // F. Anslow, Practical Millinery, 1922, p. 88: a crown strip of 36 in to a head of 24, a cover of 51 in to an edge of 34.
  test.each([
    [24, 36],
    [34, 51],
  ])('what is sewn to %d in is cut %d in long when half as much again is gathered in', (head, strip) => {
    const cap = capOf(head, { crownGather: 0.5, crownFullness: inches(8), sideBandHeight: inches(4) });
    const report = checkSeams(cap.pattern).find(({ seam }) => seam.id === 'bandToSide')!;
    expect(report.a).toBeCloseTo(inches(head), 6);
    expect(report.b).toBeCloseTo(inches(strip), 6);
    expect(report.meets).toBe(true);
  });

  // The same page: a tip oval of 4 by 3 in with half an inch to turn in. It is cut as an oval of 5 by 4, which is
  // 14.1808 round (Abramowitz and Stegun, 17.6); half an inch beyond the oval is 14.1933.
  test('an oval tip of 4 by 3 in with half an inch all round is cut 14.193 in round, not quite an oval of 5 by 4', () => {
    const piece = tip({
      id: 'tip',
      name: 'Tip',
      cuts: [],
      rim: { halfLength: inches(2), halfBreadth: inches(1.5) },
      eighths: false,
    });
    expect(pathLength(piece.outline[0]!.path)).toBeCloseTo(inches(11.0517), 2);
    const cut = pathLength(cutLine(piece, allowances(0)).flat());
    expect(Math.abs(cut - inches(14.1933))).toBeLessThan(0.02);
    const oval = ovalOfGirth(inches(14.1808), 4 / 5);
    expect(2 * oval.halfLength).toBeCloseTo(inches(5), 1);
    expect(cut / inches(14.1808) - 1).toBeCloseTo(0.0009, 4);
  });
});

describe('strips with their seam allowance', () => {
  const strip = (girth: number) =>
    band({
      id: 'band',
      name: 'Band',
      cuts: [],
      girth: inches(girth),
      height: 40,
      grain: 'along',
      visorStretch: 0,
      top: 'band',
      eighths: false,
    });
  const halfInch = allowances(inches(1 / 2));

  test.each([
    // G. A. Martin, Make Your Own Hats, 1921, ch. VI: a lining strip is the head wire and an inch.
    ['Martin’s lining for a wire of 26 in', 26, 27],
    // R. W. Spears, a newspaper sewing column of the 1940s: a child's strip hat is the head and an inch.
    ['a child’s strip hat for a head of 20 in', 20, 21],
    // Common practice: head 20, ease 1/2, one inch of allowance in all, counted once for the ring and not for each end twice.
    ['a band for a head of 20 in with half an inch of ease', 20.5, 21.5],
  ])('%s of half an inch at either end is cut an inch longer', (_, girth, expected) => {
    const piece = strip(girth);
    const cut = cutLine(piece, halfInch);
    expect(boxWidth(boundsOf(cut.flat()))).toBeCloseTo(inches(expected), 6);
    // On the fold, half of that: Spears's square of half the head and half an inch, and the 10 3/4 in of the band.
    const half = halved(piece, cut);
    expect(boxWidth(boundsOf(half.cut.flat()))).toBeCloseTo(inches(expected / 2), 6);
  });
});
