import { describe, expect, test } from 'vitest';
import { flatTop } from '../../../src/caps/flat-top/flat-top.ts';
import { flatTopParameters } from '../../../src/caps/flat-top/parameters.ts';
import { defaultsOf } from '../../../src/caps/parameter.ts';
import { HEADS } from '../family.ts';

const HEAD = HEADS[3]!;

describe('the buttons of a strap', () => {
  const usual = defaultsOf(flatTopParameters);

  test('lie on the band whole, clear of its seams, with the strap centred on them', () => {
    for (const [strapWidth, buttonDiameter, bandHeight] of [
      [12.7, 12, 38.1],
      [12.7, 25, 38.1],
      [8, 25, 29],
      [30, 8, 34],
    ] as const) {
      const values = { ...usual, strapWidth, buttonDiameter, bandHeight };
      expect(flatTop.problems(values, HEAD)).toEqual([]);
      const band = flatTop.draft(values, HEAD).pattern.pieces.find(({ id }) => id === 'band')!;
      const buttons = band.marks.filter(({ kind }) => kind === 'button');
      expect(buttons).toHaveLength(2);
      for (const mark of buttons) {
        const { y } = (mark as { readonly at: { readonly y: number } }).at;
        for (const reach of [buttonDiameter / 2, strapWidth / 2]) {
          expect(y - reach).toBeGreaterThan(1.9);
          expect(bandHeight - (y + reach)).toBeGreaterThan(1.9);
        }
      }
    }
  });

  test('are refused where they are broader than the band, with what will do', () => {
    const wide = { ...usual, strapWidth: 10, buttonDiameter: 25, bandHeight: 26 };
    const [problem, ...others] = flatTop.problems(wide, HEAD);
    expect(others).toEqual([]);
    expect(problem).toMatchObject({ field: 'cap.buttonDiameter', nearest: 22 });
    expect(flatTop.problems({ ...wide, buttonDiameter: 22 }, HEAD)).toEqual([]);
    expect(flatTop.problems({ ...wide, strap: false }, HEAD)).toEqual([]);
  });
});
