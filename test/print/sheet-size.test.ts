import { describe, expect, it } from 'vitest';
import { pageSize, papers, printable } from '../../src/print/sheet-size.ts';
import { plainPaper } from './samples.ts';

const upright = (paper: keyof typeof papers) => pageSize({ paper, orientation: 'portrait' });

describe('sheets of paper', () => {
  it('A sizes follow ISO 216: A0 is a square metre with sides as 1 to √2, each next is half, rounded down', () => {
    // Worked from the standard's rule, not from a table: A0 is 1000·2^-¼ by 1000·2^¼ mm, rounded to whole mm.
    let [short, long] = [Math.round(1000 * 2 ** -0.25), Math.round(1000 * 2 ** 0.25)];
    const a = [[short, long]];
    for (let n = 1; n <= 4; n++) {
      [short, long] = [Math.floor(long / 2), short];
      a.push([short, long]);
    }
    expect(upright('a4')).toEqual({ width: a[4]![0], height: a[4]![1] });
    expect(upright('a3')).toEqual({ width: a[3]![0], height: a[3]![1] });
    // The rolls for plotters are as wide as A1 and A0 sheets are.
    expect(upright('roll-594').width).toBe(a[1]![0]);
    expect(upright('roll-841').width).toBe(a[0]![0]);
  });

  it('Letter, Legal and Tabloid are 8 1/2 by 11, 8 1/2 by 14 and 11 by 17 inches (ANSI/ASME Y14.1; Legal: common practice)', () => {
    const inInches = ({ width, height }: { width: number; height: number }) => [width / 25.4, height / 25.4];
    for (const [paper, wide, tall] of [
      ['letter', 8.5, 11],
      ['legal', 8.5, 14],
      ['tabloid', 11, 17],
    ] as const) {
      const [width, height] = inInches(upright(paper));
      expect(Math.abs(width! - wide)).toBeLessThan(1e-9);
      expect(Math.abs(height! - tall)).toBeLessThan(1e-9);
    }
  });

  it('rolls of 24, 36 and 42 inches are 610, 914 and 1067 mm wide (common practice) and endless', () => {
    for (const [paper, wide] of [
      ['roll-610', 24],
      ['roll-914', 36],
      ['roll-1067', 42],
    ] as const) {
      expect(Math.abs(upright(paper).width - wide * 25.4)).toBeLessThan(0.5);
      expect(upright(paper).height).toBe(Infinity);
    }
  });

  it('lie across when turned, and lose the margin on all four sides', () => {
    expect(pageSize({ paper: 'a4', orientation: 'landscape' })).toEqual({ width: 297, height: 210 });
    expect(printable(plainPaper)).toEqual({ width: 190, height: 277 });
  });

  it('have a label each', () => {
    const labels = Object.values(papers).map((p) => p.label);
    expect(new Set(labels).size).toBe(11);
  });
});
