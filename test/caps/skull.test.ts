import { describe, expect, test } from 'vitest';
import { defaultsOf } from '../../src/caps/parameter.ts';
import { type SkullValues, skullParameters } from '../../src/caps/skull/parameters.ts';
import { skull } from '../../src/caps/skull/skull.ts';
import { pathLength } from '../../src/geometry/measure.ts';
import { inches } from '../../src/units.ts';
import { describeFamily, HEADS } from './family.ts';
import { timesSewn } from './times-sewn.ts';

const defaults = defaultsOf(skullParameters);
const HEAD = HEADS[3]!;
const draft = (values: Partial<SkullValues> = {}) => skull.draft({ ...defaults, ...values }, HEAD);

// Refused only: too short, or widest too high up, for a close crown to reach its middle.
describeFamily(skull, {
  mostRefused: 31,
  also: [{}, { gores: 5 }, { edge: 'facing', frontSeam: 'panel', topButton: true }],
});

describe('a skull cap', () => {
  test('has the pieces of the trade', () => {
    const namesOf = (values: Partial<SkullValues>) => draft(values).pattern.pieces.map((p) => p.name);
    expect(namesOf({})).toEqual(['Gore', 'Lining gore', 'Sweatband']);
    expect(namesOf({ edge: 'facing', lining: false, topButton: true })).toEqual([
      'Gore',
      'Button cover',
      'Facing',
    ]);
  });

  test('sews every edge of every copy, and the gores’ lower edges to lining and sweatband', () => {
    for (const gores of [4, 5, 8]) {
      const { pattern } = draft({ gores });
      for (const { piece, copy, edge, times } of timesSewn(pattern)) {
        const wished =
          piece === 'gore' && edge === 'bottom' ? 2 : piece === 'sweatband' && edge === 'top' ? 0 : 1;
        expect(times, `${piece} ${copy} ${edge}`).toBeCloseTo(wished, 6);
      }
    }
  });

  // Common practice: four to six gores, five to six inches up the middle.
  test('comes with gores of five to six inches for a grown head', () => {
    const [piece] = draft().pattern.pieces;
    const middle = pathLength(piece!.dimensions.find(({ name }) => name === 'Up the middle')!.along);
    expect(middle).toBeGreaterThan(inches(5));
    expect(middle).toBeLessThan(inches(6));
    expect(piece!.cuts[0]!.count).toBe(6);
  });

  test('is nowhere further round than at its edge', () => {
    const [piece] = draft({ gores: 7, goreWidest: 0.2, crownRoom: 10 }).pattern.pieces;
    const [lower, widest] = ['Lower edge', 'Widest'].map((name) =>
      pathLength(piece!.dimensions.find((d) => d.name === name)!.along),
    );
    expect(Math.abs(lower! - widest!)).toBeLessThan(1e-9);
  });
});
