import { describe, expect, test } from 'vitest';
import { lengthBought, toBuy } from '../../src/cloth/buying.ts';
import type { ClothSpec } from '../../src/cloth/cloth.ts';
import { clothLay } from '../../src/cloth/cloth-lay.ts';
import { offTheBolt } from '../../src/cloth/off-the-bolt.ts';
import { defaultSpec } from '../../src/design/default-spec.ts';
import { laySet } from '../../src/print/lay-sheets.ts';
import { inches } from '../../src/units.ts';

describe('buying cloth', () => {
  test('goes up to the next 10 cm', () => {
    expect(toBuy(301, 'cm')).toBe(400);
    expect(toBuy(300.2, 'cm')).toBe(300);
    expect(lengthBought(400, 'cm')).toBe('0.4 m');
  });

  test('goes up to the next eighth of a yard: 4 1/2 in, or 11.43 cm (common practice)', () => {
    expect(toBuy(1, 'in')).toBeCloseTo(114.3, 9);
    expect(toBuy(inches(13.5), 'in')).toBeCloseTo(342.9, 9);
    expect(toBuy(inches(13.6), 'in')).toBeCloseTo(457.2, 9);
  });

  test.each([
    [1, '1/8 yd'],
    [2, '1/4 yd'],
    [3, '3/8 yd'],
    [4, '1/2 yd'],
    [8, '1 yd'],
    [10, '1 1/4 yd'],
    [0, '0 yd'],
  ])('%i eighths of a yard are asked for as %s', (eighths, words) => {
    expect(lengthBought(inches(4.5 * eighths), 'in')).toBe(words);
  });
});

describe('cloth that is washed before it is cut', () => {
  const washed: ClothSpec = {
    ...defaultSpec.cloths.outer,
    shrinkLength: 0.05,
    shrinkWidth: 0.04,
    washed: true,
  };
  const layOf = (spec: ClothSpec) =>
    clothLay({ caps: [], cloth: 'outer', spec }, [], {
      placements: [],
      unplaced: [],
      length: 573,
      density: 1,
    });

  test('is bought so much longer that after the wash the pieces find room', () => {
    const { bought } = layOf(washed);
    expect(bought * (1 - 0.05)).toBeCloseTo(573, 9);
    expect(toBuy(bought, 'cm')).toBe(700);
    // Unwashed, the pieces are cut larger instead: that is in the length already.
    expect(layOf({ ...washed, washed: false }).bought).toBe(573);
  });

  test('is said on its page to be bought so', () => {
    const heading = { cap: '', wearer: '', date: '2026-11-25', unit: 'cm', finishedGirth: 560 } as const;
    const marks = laySet([layOf(washed)], heading).sheets.flatMap((sheet) => sheet.marks);
    const lines = marks.flatMap((mark) => (mark.kind === 'text' ? mark.lines : []));
    expect(lines.join()).toContain('takes 57.3 cm: buy 0.7 m');
  });

  test('comes off the bolt wider than it is laid; its own width is measured after the wash', () => {
    expect(offTheBolt(washed, 1400).width).toBeCloseTo(0.96 * 1400, 9);
    expect(offTheBolt(washed).width).toBe(washed.width);
    expect(offTheBolt({ ...washed, washed: false }, 1400).width).toBe(1400);
  });
});
