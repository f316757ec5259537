import { describe, expect, test } from 'vitest';
import type { ClothSpec, Cloths } from '../../src/cloth/cloth.ts';
import { growthOf } from '../../src/cloth/shrinkage.ts';
import { turnOfCloth } from '../../src/cloth/turn-of-cloth.ts';

const cloth = (thickness: number): ClothSpec => ({
  kind: 'other',
  thickness,
  width: 1400,
  nap: false,
  cross: false,
  bias: false,
  shrinkLength: 0,
  shrinkWidth: 0,
  washed: false,
  folded: false,
  length: null,
  scraps: [],
  price: null,
});
const cloths = (outer: number, lining: number, interlining: number): Cloths => ({
  outer: cloth(outer),
  lining: cloth(lining),
  interlining: cloth(interlining),
  stiffener: cloth(1.8),
});

describe('turn of cloth', () => {
  test('every millimetre of cloth inside the shell takes 6.3 mm of girth (common practice: 2π times the layer)', () => {
    const thin = turnOfCloth(cloths(0.8, 0.2, 0.3), ['lining', 'interlining']);
    const thicker = turnOfCloth(cloths(0.8, 1.2, 0.3), ['lining', 'interlining']);
    expect(thicker.shell - thin.shell).toBeCloseTo(6.283, 3);
  });

  test('the lining is smaller than the shell by 2π (half shell + interlining + half lining), as the trade reckons', () => {
    const { shell, inner } = turnOfCloth(cloths(1.2, 0.2, 0.3), ['lining', 'interlining']);
    expect(shell - inner).toBeCloseTo(2 * Math.PI * (0.6 + 0.3 + 0.1), 9);
  });

  test('a cap without lining is faced with its own cloth, which lies against the head', () => {
    const { shell } = turnOfCloth(cloths(1, 5, 0.4), ['outer']);
    expect(shell).toBeCloseTo(2 * Math.PI * 1.5, 9);
  });

  test('cloth of no thickness gives the plain rule of thumb', () => {
    const { shell, inner, depth } = turnOfCloth(cloths(0, 0, 0), ['lining', 'interlining']);
    expect([shell, inner, depth]).toEqual([0, 0, 0]);
  });
});

describe('shrinkage', () => {
  test('two per cent of 580 mm is 11.6 mm, more than the whole ease (common practice: cut wanted ÷ (1 − s))', () => {
    const { along } = growthOf({ washed: false, shrinkLength: 0.02, shrinkWidth: 0 });
    const cut = 580 * along;
    expect(cut * 0.02).toBeCloseTo(11.84, 2);
    expect(cut * (1 - 0.02)).toBeCloseTo(580, 9);
    expect(580 * 0.02).toBeCloseTo(11.6, 9);
  });

  test('washed cloth is cut as drawn', () => {
    expect(growthOf({ washed: true, shrinkLength: 0.05, shrinkWidth: 0.03 })).toEqual({
      along: 1,
      across: 1,
    });
  });
});
