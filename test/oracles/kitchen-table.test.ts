import { describe, expect, test } from 'vitest';
import { flatTop } from '../../src/caps/flat-top/flat-top.ts';
import { flatTopParameters } from '../../src/caps/flat-top/parameters.ts';
import { defaultsOf } from '../../src/caps/parameter.ts';
import { pathLength } from '../../src/geometry/measure.ts';
import { radius } from '../../src/geometry/path.ts';
import { cutLine } from '../../src/pattern/cut-line.ts';
import { inches } from '../../src/units.ts';

// Common practice of the trade: 21 1/2 in of head, 1/2 in of ease, a crown 4 in fuller, a side band 2 1/2 in high,
// 1/4 in of seam allowance; and the way it is drafted on a kitchen table, with the error that it makes.
const cap = flatTop.draft(
  { ...defaultsOf(flatTopParameters), sideBandPieces: '2' },
  { girth: inches(21.5), ratio: 0.8, arc: 307 },
);
const piece = (id: string) => cap.pattern.pieces.find((p) => p.id === id)!;
const edge = (id: string, name: string) => piece(id).outline.find((e) => e.name === name)!.path;
const arcOf = (id: string, name: string) => {
  const [curve] = edge(id, name);
  if (curve?.kind !== 'arc') throw new Error(`${id} ${name} is not a true arc`);
  return curve;
};

describe('the common flat-top draft', () => {
  test('finishes at 22 in inside and 26 in round the crown', () => {
    expect(cap.finishedGirth).toBeCloseTo(inches(22), 9);
    expect(pathLength(edge('tip', 'rim'))).toBeCloseTo(inches(26), 9);
  });

  test('has a tip of radius 4.138 in, cut at 4.388', () => {
    expect(radius(arcOf('tip', 'rim')) / 25.4).toBeCloseTo(4.138, 3);
    const [cut] = cutLine(piece('tip'), cap.pattern.allowances).flat();
    expect(cut?.kind === 'arc' && radius(cut) / 25.4).toBeCloseTo(4.388, 3);
  });

  test('has half side bands that are ring sectors of 13.75 and 16.25 in over 0.8 rad', () => {
    const [bottom, top] = [arcOf('sideBandFront', 'bottom'), arcOf('sideBandFront', 'top')];
    expect(radius(bottom) / 25.4).toBeCloseTo(13.75, 9);
    expect(radius(top) / 25.4).toBeCloseTo(16.25, 9);
    expect(Math.abs(bottom.sweep)).toBeCloseTo(0.8, 12);
    expect(Math.abs(top.sweep)).toBeCloseTo(0.8, 12);
  });

  test('shows what the kitchen-table quarter (1 in out of square, bowed 1/4 in) should be: 1.085 and 0.274 in', () => {
    const bottom = arcOf('sideBandFront', 'bottom');
    const rise = (bottom.centre.y + radius(bottom) - bottom.from.y) / 25.4;
    expect(rise).toBeCloseTo(1.085, 3);
    const bow = (radius(bottom) * (1 - Math.cos(Math.abs(bottom.sweep) / 4))) / 25.4;
    expect(bow).toBeCloseTo(0.274, 3);
  });

  test('has quarters whose top is the 6.5 in that the tip needs, where the kitchen-table arc comes out at 6.437', () => {
    // The arc with a chord of 5 1/2 in and a bow of 1/4, and the one 2 1/2 in outside it.
    const r = ((5.5 / 2) ** 2 + 0.25 ** 2) / (2 * 0.25);
    const kitchen = (r + 2.5) * 2 * Math.asin(5.5 / 2 / r);
    expect(kitchen).toBeCloseTo(6.437, 3);
    const ours = pathLength(edge('sideBandFront', 'top')) / 2 / 25.4;
    expect(ours).toBeCloseTo(6.5, 9);
    expect(pathLength(edge('tip', 'rim')) / 4 / 25.4).toBeCloseTo(ours, 9);
  });
});
