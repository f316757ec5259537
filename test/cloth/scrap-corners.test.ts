import { describe, expect, test } from 'vitest';
import { readCorners, writeCorners } from '../../src/cloth/scrap-corners.ts';

describe('the corners of a scrap', () => {
  test('are read as they are written, in either unit', () => {
    for (const unit of ['cm', 'in'] as const) {
      const read = readCorners('0 0; 40 0; 42.5 30; 0 28', unit);
      if (!read.ok) throw new Error(read.message);
      expect(writeCorners(read.corners, unit)).toBe('0 0; 40 0; 42.5 30; 0 28');
      expect(read.corners[1]!.x).toBeCloseTo(unit === 'cm' ? 400 : 1016, 9);
    }
  });

  test('may be typed with a comma for the decimals, and with units', () => {
    const read = readCorners('0 0; 40,5 0; 400mm 12in', 'cm');
    expect(
      read.ok && read.corners.map(({ x, y }) => [Math.round(x * 1000) / 1000, Math.round(y * 1000) / 1000]),
    ).toEqual([
      [0, 0],
      [405, 0],
      [400, 304.8],
    ]);
  });

  test.each([
    ['0 0; 40 0', /three corners/],
    ['0 0; 40; 40 30', /along and across/],
    ['a b; c d; e f', /along and across/],
    ['0 0; 40 30; 40 0; 0 30', /crosses itself/],
  ])('%s are refused with a word that helps', (text, message) => {
    const read = readCorners(text, 'cm');
    expect(!read.ok && read.message).toMatch(message);
  });
});
