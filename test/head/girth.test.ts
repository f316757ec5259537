import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { judgeGirth, judgeReadings, meanGirth, spread } from '../../src/head/girth.ts';
import { say } from '../../src/words.ts';

describe('readings of a head girth', () => {
  it('are averaged, and their spread is the largest less the smallest', () => {
    expect(meanGirth([546, 548, 553])).toBe(549);
    expect(spread([546, 548, 553])).toBe(7);
    expect(meanGirth([546])).toBe(546);
    expect(spread([546])).toBe(0);
  });

  it('have no mean and no spread when there is none', () => {
    expect(meanGirth([])).toBeNull();
    expect(spread([])).toBe(0);
  });

  it('have their mean between the smallest and the largest, in whatever order they were taken', () => {
    const readings = fc.array(fc.double({ min: 300, max: 700, noNaN: true }), { minLength: 1, maxLength: 3 });
    fc.assert(
      fc.property(readings, (taken) => {
        const mean = meanGirth(taken)!;
        const back = meanGirth(taken.toReversed())!;
        const [least, most] = [Math.min(...taken), Math.max(...taken)];
        return mean >= least - 1e-9 && mean <= most + 1e-9 && Math.abs(mean - back) < 1e-9;
      }),
    );
  });

  it('are worth taking again when they are more than a centimetre apart', () => {
    expect(judgeReadings([546]).kind).toBe('fine');
    expect(judgeReadings([546, 551, 556]).kind).toBe('fine');
    const judged = judgeReadings([546, 560, 551]);
    expect(judged.kind).toBe('warning');
    expect(say(judged.message, 'cm')).toMatch(/^The readings are 1\.4 cm apart.*Measure again/);
  });
});

describe('a head girth', () => {
  it('is no head without a girth', () => {
    for (const girth of [0, -560, Number.NaN, Infinity]) expect(judgeGirth(girth).kind).toBe('error');
  });

  it('is said to be a child’s where no adult of the survey was as small', () => {
    const judged = judgeGirth(480);
    expect(judged.kind).toBe('fine');
    expect(say(judged.message, 'cm')).toContain('child');
    expect(say(judgeGirth(560).message, 'cm')).not.toContain('child');
  });

  it('gets a plain warning, with whose data it is held against, when it is smaller or larger than heads measured', () => {
    const small = judgeGirth(290);
    expect(small.kind).toBe('warning');
    expect(say(small.message, 'cm')).toMatch(/30\.3 cm \(WHO Child Growth Standards\)/);
    const large = judgeGirth(660);
    expect(large.kind).toBe('warning');
    expect(say(large.message, 'cm')).toMatch(/ANSUR II.*63\.5 cm/);
  });

  it('is an error only where there can be no head, on both sides', () => {
    expect(judgeGirth(199).kind).toBe('error');
    expect(judgeGirth(901).kind).toBe('error');
    fc.assert(
      fc.property(
        fc.double({ min: 200, max: 900, noNaN: true }),
        (girth) => judgeGirth(girth).kind !== 'error',
      ),
    );
  });

  // A girth of 21 1/2 in is 54.61 cm: each number typed where the other was meant.
  it('that was read off the other side of the tape is told what was probably meant', () => {
    const inchesAsCm = judgeGirth(215, 'cm');
    expect(inchesAsCm.kind).toBe('warning');
    expect(inchesAsCm.likely).toBeCloseTo(546.1, 9);
    expect(say(inchesAsCm.message, 'cm')).toContain('Read in inches the same number is 54.6 cm.');
    const cmAsInches = judgeGirth(54.61 * 25.4, 'in');
    expect(cmAsInches.kind).toBe('error');
    expect(cmAsInches.likely).toBeCloseTo(546.1, 9);
    expect(say(cmAsInches.message, 'in')).toContain('Read in centimetres the same number is 21 1/2 in.');
    expect(judgeGirth(5460, 'cm').likely).toBeCloseTo(546, 9);
    expect(judgeGirth(546 * 25.4, 'in').likely).toBeCloseTo(546, 9);
  });

  it('has nothing likelier where no other unit makes it a head, or the unit is not known', () => {
    expect(judgeGirth(100_000, 'cm')).not.toHaveProperty('likely');
    expect(judgeGirth(5, 'in')).not.toHaveProperty('likely');
    expect(judgeGirth(215)).not.toHaveProperty('likely');
    expect(judgeGirth(560, 'cm')).not.toHaveProperty('likely');
  });
});
