import { describe, expect, it } from 'vitest';
import type { PaperSpec } from '../../src/print/paper.ts';
import { paperProblems } from '../../src/print/paper-problems.ts';
import { papers } from '../../src/print/sheet-size.ts';
import { sheetsOf } from '../../src/print/sheets.ts';
import { say } from '../../src/words.ts';
import { adultCap, heading, plainPaper } from './samples.ts';

const problemOf = (change: Partial<PaperSpec>) => {
  const problems = paperProblems({ ...plainPaper, ...change });
  expect(problems).toHaveLength(1);
  return problems[0]!;
};

describe('paper that cannot be printed on', () => {
  it('is none of the papers as people print them', () => {
    for (const paper of Object.keys(papers) as (keyof typeof papers)[])
      for (const orientation of ['portrait', 'landscape'] as const)
        for (const join of ['overlap', 'butt'] as const)
          expect(paperProblems({ ...plainPaper, paper, orientation, join })).toEqual([]);
  });

  it.each([
    ['a margin that leaves no room for the test squares', { margin: 60 }, 'paper.margin'],
    ['a margin wider than the sheet', { margin: 500 }, 'paper.margin'],
    ['a margin below nothing', { margin: -1 }, 'paper.margin'],
    ['a margin that is no number', { margin: Number.NaN }, 'paper.margin'],
    ['an overlap as wide as the sheet', { overlap: 190 }, 'paper.overlap'],
    ['an overlap too narrow to glue', { overlap: 1 }, 'paper.overlap'],
    ['an overlap that is no number', { overlap: Number.NaN }, 'paper.overlap'],
  ] as const)('%s, and the nearest value that works does work', (_, change, field) => {
    const problem = problemOf(change);
    expect(problem.field).toBe(field);
    const name = field.replace('paper.', '') as 'margin';
    const mended: PaperSpec = { ...plainPaper, ...change, [name]: problem.nearest! };
    expect(paperProblems(mended)).toEqual([]);
    expect(sheetsOf(adultCap(), mended, heading).sheets.length).toBeGreaterThan(1);
  });

  it('the nearest margin and overlap are the outermost that work, to a millimetre', () => {
    const margin = problemOf({ margin: 60 }).nearest!;
    expect(paperProblems({ ...plainPaper, margin: margin + 1 })).toHaveLength(1);
    const overlap = problemOf({ overlap: 190 }).nearest!;
    expect(paperProblems({ ...plainPaper, overlap: overlap + 1 })).toHaveLength(1);
  });

  it('a roll or one page has room for the squares at any margin, and the widest is no more than a waste', () => {
    for (const paper of ['roll-594', 'roll-1067', 'one-page'] as const) {
      // A printer that draws small leaves the least room.
      const endless = { paper, measuredAcross: 90, measuredDown: 90 };
      const { message, nearest } = problemOf({ ...endless, margin: 150 });
      expect(say(message, 'cm')).toBe('So wide a margin only wastes paper. 10.0 cm is the most.');
      const set = sheetsOf(adultCap(), { ...plainPaper, ...endless, margin: nearest! }, heading);
      const said = set.sheets[0]!.marks.flatMap((mark) => (mark.kind === 'text' ? mark.lines : []));
      expect(said).toEqual(expect.arrayContaining(['100 mm', '4 in']));
    }
  });

  it.each([
    ['a square that came out at 85 mm across', { measuredAcross: 85 }, 'paper.measuredAcross'],
    ['a square that came out at 120 mm down', { measuredDown: 120 }, 'paper.measuredDown'],
    ['a square of nothing', { measuredDown: 0 }, 'paper.measuredDown'],
    ['a square that is no number', { measuredAcross: Number.NaN }, 'paper.measuredAcross'],
  ] as const)('%s is to be printed again: no measure is offered that nobody took', (_, change, field) => {
    const problem = problemOf(change);
    expect(problem.field).toBe(field);
    expect(problem).not.toHaveProperty('nearest');
  });

  it('asks whether the viewer scaled when the test square is far off', () => {
    const { message } = problemOf({ measuredAcross: 94.1 - 10 });
    expect(say(message, 'cm')).toMatch(/not a 100 mm square.*viewer did not scale/);
  });

  it('an A4 pattern fitted to Letter by the viewer (94.1 %, worked out from the sizes) is still within what can be typed', () => {
    const fitted = (100 * 279.4) / 297;
    expect(paperProblems({ ...plainPaper, measuredAcross: fitted, measuredDown: fitted })).toEqual([]);
  });

  it('an overlap does not matter where sheets are butted or there is one page', () => {
    expect(paperProblems({ ...plainPaper, join: 'butt', overlap: 1000 })).toEqual([]);
    expect(paperProblems({ ...plainPaper, paper: 'one-page', overlap: 1000 })).toEqual([]);
  });
});
