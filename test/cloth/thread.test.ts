import { describe, expect, test } from 'vitest';
import { threadFor, threadWords } from '../../src/cloth/thread.ts';
import { defaultSpec } from '../../src/design/default-spec.ts';
import { inches } from '../../src/units.ts';
import { derive } from '../design/derive.ts';

const { seams } = derive(defaultSpec).draft!;
const sewn = seams.reduce((sum, { a, b }) => sum + Math.max(a, b), 0);

describe('thread for a cap', () => {
  test('is that of its seams, 2.5 to 3 times each, and no more than as much again for topstitching, tacking and ends (common practice)', () => {
    expect(threadFor(seams) / sewn).toBeGreaterThan(2.5);
    expect(threadFor(seams) / sewn).toBeLessThan(2 * 3);
  });

  test('comes off one reel of 100 m, the smallest that shops have (common practice)', () => {
    expect(threadFor(seams)).toBeLessThan(100_000);
  });

  test('goes by the longer side of a gathered seam, where the stitches lie', () => {
    const [seam] = seams;
    const level = { ...seam!, a: 600, b: 600 };
    expect(threadFor([{ ...level, b: 900 }]) / threadFor([level])).toBeCloseTo(1.5, 9);
    expect(threadFor([{ ...level, a: 900 }]) / threadFor([level])).toBeCloseTo(1.5, 9);
  });

  test('is said in whole metres or yards, never too few', () => {
    expect(threadWords(31_001, 'cm')).toBe('32 m');
    expect(threadWords(31_000, 'cm')).toBe('31 m');
    expect(threadWords(inches(36 * 31) + 1, 'in')).toBe('32 yd');
  });
});
