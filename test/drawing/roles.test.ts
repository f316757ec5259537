import { describe, expect, it } from 'vitest';
import { lineStyles, SMALLEST_TEXT, textStyles } from '../../src/drawing/roles.ts';

describe('line roles', () => {
  it('have the weights that home patterns have on paper (common practice)', () => {
    expect(lineStyles.cut.weight).toBeGreaterThanOrEqual(0.5);
    expect(lineStyles.cut.weight).toBeLessThanOrEqual(0.75);
    expect(lineStyles.stitch.weight).toBeGreaterThanOrEqual(0.3);
    expect(lineStyles.stitch.weight).toBeLessThanOrEqual(0.4);
    expect(lineStyles.grain.weight).toBe(0.4);
  });

  it('are told apart by dash or by weight where there is no colour', () => {
    const lines = ['cut', 'stitch', 'fold', 'grain', 'centre', 'dimension'] as const;
    const looks = lines.map((role) => `${lineStyles[role].weight} ${lineStyles[role].dash.join(' ')}`);
    expect(new Set(looks).size).toBe(lines.length);
    for (const role of ['stitch', 'fold', 'centre'] as const) {
      expect(lineStyles[role].dash.length).toBeGreaterThan(0);
    }
    expect(lineStyles.cut.dash).toEqual([]);
  });

  it('never set a text under 8 point', () => {
    expect(SMALLEST_TEXT).toBeCloseTo((8 * 25.4) / 72, 12);
    for (const { size } of Object.values(textStyles)) expect(size).toBeGreaterThanOrEqual(SMALLEST_TEXT);
  });
});
