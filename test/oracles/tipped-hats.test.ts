import { describe, expect, test } from 'vitest';
import { bucket } from '../../src/caps/bucket/bucket.ts';
import { bucketParameters } from '../../src/caps/bucket/parameters.ts';
import { defaultsOf } from '../../src/caps/parameter.ts';
import { reachOf, sideSlope } from '../../src/caps/parts/side-band/side-slope.ts';
import { tip } from '../../src/caps/parts/tip/tip.ts';
import { pillboxParameters } from '../../src/caps/pillbox/parameters.ts';
import { pillbox } from '../../src/caps/pillbox/pillbox.ts';
import { areaOf } from '../../src/geometry/area.ts';
import { boundsOf } from '../../src/geometry/bounds.ts';
import { pathLength, pointAt } from '../../src/geometry/measure.ts';
import { ovalGirth, ovalOfGirth } from '../../src/geometry/oval.ts';
import { type Arc, radius } from '../../src/geometry/path.ts';
import { ringSector } from '../../src/geometry/ring-sector.ts';
import { cutLine } from '../../src/pattern/cut-line.ts';
import type { Allowances } from '../../src/pattern/pattern.ts';
import { inches } from '../../src/units.ts';

const inDegrees = (radians: number) => (radians * 180) / Math.PI;
const toInches = (mm: number) => mm / inches(1);
/** A pillbox for a head of some girth in inches, without ease; `L − B` is what its oval is longer than broad, if that is known. */
const pillboxFor = (girth: number, ratio: number, values: object) =>
  pillbox.draft(
    { ...defaultsOf(pillboxParameters), ease: 0, ...values },
    { girth: inches(girth), ratio, arc: inches(13) },
  ).pattern.pieces;

describe('pillbox and sailor frames', () => {
  // G. A. Martin, Make Your Own Hats, 1921, ch. I: a frame 3 1/2 in high with a tip of 8 1/2 by 6 1/2 for a head of 24. An
  // ellipse of those axes is 23.667 round: the printed tip is 1.4 % small for its head.
  test('Martin’s tip of 8 1/2 by 6 1/2 in for a head of 24 is drawn 8.62 by 6.59, and 24 round', () => {
    const pieces = pillboxFor(24, 6.5 / 8.5, { sideBandHeight: inches(3.5) });
    const rim = pieces.find(({ id }) => id === 'tip')!.outline[0]!.path;
    const { min, max } = boundsOf(rim);
    const [length, breadth] = [toInches(max.y - min.y), toInches(max.x - min.x)];
    expect(toInches(pathLength(rim))).toBeCloseTo(24, 3);
    expect(length).toBeCloseTo((8.5 * 24) / 23.6668, 3);
    expect(breadth).toBeCloseTo((6.5 * 24) / 23.6668, 3);
    const side = pieces.find(({ id }) => id === 'sideBand')!;
    expect(toInches(pathLength(side.outline.find(({ name }) => name === 'right')!.path))).toBeCloseTo(3.5, 9);
  });

  // Martin, 1921, ch. IV: ovals 2 in longer than broad.
  test.each([
    [24, 8.607, 6.607],
    [25, 8.926, 6.926],
  ])(
    'a pillbox for %d in on a head 2 in longer than broad has a tip of %d by %d',
    (girth, length, breadth) => {
      const pieces = pillboxFor(girth, breadth / length, {});
      const { min, max } = boundsOf(pieces.find(({ id }) => id === 'tip')!.outline[0]!.path);
      expect(Math.abs(toInches(max.y - min.y) - length)).toBeLessThan(0.01);
      expect(Math.abs(toInches(max.x - min.x) - breadth)).toBeLessThan(0.01);
    },
  );

  // Martin, 1921, ch. I: a side 3 1/2 in high from a strip of 24 1/2 lapped by 1/4, the top at least 1 1/2 in less round.
  test('Martin’s side of 24 1/4 in below, 1 1/2 less above and 3 1/2 high bows 1.294 in and leans in 3.9°', () => {
    const values = { tipShape: 'round', sideBandHeight: inches(3.5), crownTaper: inches(1.5) };
    const pieces = pillboxFor(24.25, 1, values);
    const edge = (name: string) =>
      pieces.find(({ id }) => id === 'sideBand')!.outline.find((e) => e.name === name)!.path;
    expect(toInches(radius(edge('bottom')[0] as Arc))).toBeCloseTo(56.583, 3);
    expect(toInches(radius(edge('top')[0] as Arc))).toBeCloseTo(53.083, 3);
    expect(inDegrees(Math.abs((edge('bottom')[0] as Arc).sweep))).toBeCloseTo(24.56, 2);
    const bottom = edge('bottom');
    const bow = bottom[0]!.from.y - pointAt(bottom, pathLength(bottom) / 2).y;
    expect(toInches(bow)).toBeCloseTo(1.294, 3);
    const { reckoning } = pillbox
      .draft({ ...defaultsOf(pillboxParameters), ease: 0, ...values } as never, {
        girth: inches(24.25),
        ratio: 1,
        arc: inches(13),
      })
      .facts.find(({ id }) => id === 'side')!;
    const lean = reckoning[0]!.worked.find((part) => typeof part !== 'string' && 'radians' in part) as {
      radians: number;
    };
    expect(inDegrees(lean.radians)).toBeCloseTo(3.9, 1);
  });

  // Common practice: a pillbox stands 2 to 3 1/2 in, straight up or within 5°.
  test('a pillbox comes in the trade’s height, and its usual tapers lean by 5° at most', () => {
    const { sideBandHeight, crownTaper } = pillboxParameters;
    expect(sideBandHeight.default).toBeGreaterThanOrEqual(inches(2));
    expect(sideBandHeight.default).toBeLessThanOrEqual(inches(3.5));
    const lean = Math.asin(crownTaper.usual[1] / (2 * Math.PI * sideBandHeight.default));
    expect(inDegrees(lean)).toBeCloseTo(5, 0);
  });
});

describe('the service hat of 1861', () => {
  // Revised United States Army Regulations, 1861, art. 1476, medium hat: crown 6 1/4 in high, taper 3/4 (taken as the whole
  // difference of the diameters).
  test('tapers by 3.43° from upright', () => {
    const girth = 22;
    const slant = Math.hypot(6.25, 0.375);
    const side = sideSlope(ovalOfGirth(girth - Math.PI * 0.75, 1), girth, slant);
    expect(-reachOf(side)).toBeCloseTo(0.375, 9);
    expect(inDegrees(Math.asin(-reachOf(side) / side.height))).toBeCloseTo(3.43, 2);
  });
});

describe('turnings round an oval', () => {
  // F. Anslow, Practical Millinery, 1922, p. 88: a tip of 4 by 3 in is cut 5 by 4 for half an inch of turnings. The outline half
  // an inch off an ellipse is no ellipse: 14.1933 in round, the printed one 14.1808.
  test('half an inch off an oval tip of 4 by 3 in is 14.193 in round, where an ellipse of 5 by 4 has 14.181', () => {
    const oval = { halfLength: inches(2), halfBreadth: inches(1.5) };
    const piece = tip({ id: 'tip', name: 'Tip', cuts: [], rim: oval, eighths: false });
    const allowances = { crown: inches(1 / 2) } as Partial<Allowances> as Allowances;
    expect(toInches(pathLength(piece.outline[0]!.path))).toBeCloseTo(11.0517, 3);
    expect(toInches(pathLength(cutLine(piece, allowances).flat()))).toBeCloseTo(14.1933, 3);
    expect(ovalGirth({ halfLength: 2.5, halfBreadth: 2 })).toBeCloseTo(14.1808, 4);
  });
});

describe('the surface of a flared side', () => {
  // A school mensuration text of the 19th century, p. 76, with π as 22/7: frustums of 5 ft 4 and 8 ft 3 across, slant 10 ft 6;
  // and of 15 ft 4 and 26 ft 8 across, 23 ft 9 deep. Printed 224 and 1611 square feet, the fractions lost.
  const surface = (pi: number, small: number, large: number, slant: number) => {
    const s = ringSector(pi * large, pi * small, slant);
    return areaOf([...s.bottom, ...s.right, ...s.top, ...s.left]);
  };

  test('is 224 1/8 and 1611 1/2 square feet as the school book had it, and a little less with the true π', () => {
    const slant = Math.hypot(23.75, (26 + 8 / 12 - (15 + 4 / 12)) / 2);
    expect(surface(22 / 7, 5 + 4 / 12, 8.25, 10.5)).toBeCloseTo(224.125, 6);
    expect(surface(22 / 7, 15 + 4 / 12, 26 + 8 / 12, slant)).toBeCloseTo(1611.5, 6);
    expect(surface(Math.PI, 5 + 4 / 12, 8.25, 10.5)).toBeCloseTo(Math.PI * 71.3125, 6);
  });
});

describe('a bucket hat as the trade cuts it', () => {
  // Common practice: side 3 to 4 in, narrower at the top; adult ease 1/2 in; the ring of its brim from r / cos drop.
  test('for a head of 22 in is 22 1/2 in inside at every seam round the head', () => {
    const values = { ...defaultsOf(bucketParameters), ease: inches(1 / 2), crownTaper: inches(1.5) };
    const { pieces } = bucket.draft(values, { girth: inches(22), ratio: 0.8, arc: inches(13) }).pattern;
    const along = (id: string, edge: string) =>
      toInches(pathLength(pieces.find((p) => p.id === id)!.outline.find((e) => e.name === edge)!.path));
    expect(along('sideBand', 'bottom')).toBeCloseTo(22.5, 6);
    expect(along('brim', 'inner')).toBeCloseTo(22.5, 6);
    expect(along('liningSide', 'bottom')).toBeCloseTo(22.5, 6);
    expect(along('sweatband', 'bottom')).toBeCloseTo(22.5, 6);
    expect(along('tip', 'rim')).toBeCloseTo(21, 6);
    // A tip of 21 in is 6.685 in across.
    const { min, max } = boundsOf(pieces.find(({ id }) => id === 'tip')!.outline[0]!.path);
    expect(toInches(max.x - min.x)).toBeCloseTo(6.685, 3);
  });
});
