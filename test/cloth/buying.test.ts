import { describe, expect, test } from 'vitest';
import { lengthBought, toBuy } from '../../src/cloth/buying.ts';
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
