import { describe, expect, it } from 'vitest';
import { count, exactMm, mm, radians, ratio, say, words } from '../src/words.ts';

describe('a sentence with quantities', () => {
  const wish = words`Try ${mm(546.1)} or less, at ${radians(Math.PI / 6)}.`;

  it('is said in the unit of the reader', () => {
    expect(say(wish, 'cm')).toBe('Try 54.6 cm or less, at 30°.');
    expect(say(wish, 'in')).toBe('Try 21 1/2 in or less, at 30°.');
  });

  it('says a length of arithmetic with decimals', () => {
    expect(say(words`r = ${exactMm(105.1)}`, 'cm')).toBe('r = 10.51 cm');
    expect(say(words`r = ${exactMm(105.1)}`, 'in')).toBe('r = 4.138 in');
  });

  it('says parts of one in percent, and plain numbers with few decimals and a true minus', () => {
    expect(say(words`${ratio(0.8)} of ${count(4)}`, 'cm')).toBe('80 % of 4');
    expect(say([count(2 * Math.PI), ' ', count(-1.5), ' ', count(Number.NaN)], 'in')).toBe('6.283 −1.5 –');
  });

  it('takes other sentences and plain text into itself', () => {
    const inner = words`${count(2)} of ${mm(10)}`;
    expect(say(words`${inner} and ${'no'} more`, 'cm')).toBe('2 of 1.0 cm and no more');
    expect(words`plain`).toEqual(['plain']);
    expect(words`${mm(1)}`).toEqual([{ mm: 1 }]);
    expect(say([], 'cm')).toBe('');
  });

  it('keeps its quantities as numbers until it is said', () => {
    expect(JSON.parse(JSON.stringify(wish))).toEqual(wish);
  });
});
