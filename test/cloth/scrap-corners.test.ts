import { describe, expect, test } from 'vitest';
import { readCorners, rectangle, writeCorners } from '../../src/cloth/scrap-corners.ts';
import { distance } from '../../src/geometry/point.ts';

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
    '0 0; 24 0; 24 16; 0 16',
    '0,0; 24,0; 24,16; 0,16',
    '0,0 24,0 24,16 0,16',
    '0, 0; 24, 0; 24, 16; 0, 16',
    '0 0 24 0 24 16 0 16',
    '0 0 24 0 24 16 0 16 in',
    '24 x 16',
    '24 × 16',
    '24x16 in',
    '24 in X 16 in',
    '48/2 x 16',
  ])('%s is a rectangle of 24 by 16, in inches', (text) => {
    const read = readCorners(text, 'in');
    if (!read.ok) throw new Error(read.message);
    expect(read.corners).toHaveLength(4);
    for (const [i, [x, y]] of [
      [0, 0],
      [24, 0],
      [24, 16],
      [0, 16],
    ].entries()) {
      expect(read.corners[i]!.x).toBeCloseTo(x! * 25.4, 9);
      expect(read.corners[i]!.y).toBeCloseTo(y! * 25.4, 9);
    }
  });

  test('given twice in a row, or the first again at the end, are one', () => {
    for (const text of ['0 0; 40 0; 40 30; 0 30; 0 0', '0 0; 40 0; 40 30; 40 30; 0 30']) {
      const read = readCorners(text, 'cm');
      expect(read.ok && writeCorners(read.corners, 'cm')).toBe('0 0; 40 0; 40 30; 0 30');
    }
  });

  test('keep their place to a third of a millimetre when they are written and read back', () => {
    for (const unit of ['cm', 'in'] as const) {
      const back = readCorners(writeCorners(rectangle(3, 7, 400, 300), unit), unit);
      if (!back.ok) throw new Error(back.message);
      const far = rectangle(3, 7, 400, 300).map((corner, i) => distance(corner, back.corners[i]!));
      expect(Math.max(...far)).toBeLessThan(unit === 'cm' ? 0.01 : 0.2);
    }
  });

  test('of a size with its unit once at the end are both in that unit', () => {
    const read = readCorners('24 x 16 in', 'cm');
    expect(read.ok && read.corners[2]!.x).toBeCloseTo(609.6, 9);
  });

  test.each([
    ['0 0; 40 0', /three corners/],
    ['0 0 40 0', /three corners/],
    ['0 0 40 0 40', /along and across/],
    ['0 0 40 1/2 40 30', /along and across/],
    ['24 x 0', /along and across/],
    ['24 x 16 x 2', /along and across/],
    // Six corners, or three with decimal commas.
    ['0,0 24,0 24,16 12,16 12,8 0,8', /two ways/],
    ['0 0; 40; 40 30', /along and across/],
    ['a b; c d; e f', /along and across/],
    ['0 0; 40 30; 40 0; 0 30', /crosses itself/],
    ['0 0; 40 0; 80 0', /on one line/],
    ['0 0; 0 0; 0 0', /three corners/],
    [Array.from({ length: 61 }, (_, i) => `${i} ${i * i}`).join(';'), /than 60 corners/],
  ])('%s are refused with a word that helps', (text, message) => {
    const read = readCorners(text, 'cm');
    expect(!read.ok && read.message).toMatch(message);
  });
});
