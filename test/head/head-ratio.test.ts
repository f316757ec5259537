import { describe, expect, it } from 'vitest';
import { headRatio } from '../../src/head/head-ratio.ts';

describe('breadth by length', () => {
  it('is that of the head where both were measured', () => {
    expect(headRatio({ length: 200, breadth: 155 })).toBe(0.775);
  });

  // Common practice: a head that was not measured is drafted 80 parts broad to 100 long.
  it('is 0.80 where one was not measured or is no length', () => {
    const unmeasured = [
      { length: null, breadth: null },
      { length: 200, breadth: null },
      { length: null, breadth: 155 },
      { length: 0, breadth: 155 },
      { length: 200, breadth: 0 },
      { length: -200, breadth: 155 },
      { length: Number.NaN, breadth: 155 },
      { length: 200, breadth: Infinity },
    ];
    for (const head of unmeasured) expect(headRatio(head), JSON.stringify(head)).toBe(0.8);
  });
});
