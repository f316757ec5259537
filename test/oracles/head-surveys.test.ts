import { describe, expect, it } from 'vitest';
import { judgeGirth } from '../../src/head/girth.ts';
import { headRatio, USUAL_RATIO } from '../../src/head/head-ratio.ts';
import { judgeBreadth, judgeLength, judgeRatio, USUAL_RATIOS } from '../../src/head/shape.ts';
import { ADULTS, HEAD_GIRTHS, SMALL_CHILDREN, TODDLERS } from '../../src/head/surveys.ts';
import heads from '../reference/heads.json';
import sixty from '../reference/sixty-heads.json';

const { ansur2, us1977, who } = heads;

// ANSUR II: Gordon and others, 2012 Anthropometric Survey of U.S. Army Personnel, NATICK/TR-15/007, 2014.
describe('the adults of the 2012 US Army survey', () => {
  it.each(['girth', 'length', 'breadth', 'ratio'] as const)(
    '%s: the range is that of men and women together',
    (what) => {
      const { men, women } = ansur2;
      expect(ADULTS[what].least).toBe(Math.min(men[what].min, women[what].min));
      expect(ADULTS[what].most).toBe(Math.max(men[what].max, women[what].max));
    },
  );

  it('are 6,068, as the messages say', () => {
    expect(ansur2.men.girth.n + ansur2.women.girth.n).toBe(6068);
  });

  it('get no warning for girth, length or breadth: sixty of them', () => {
    expect(sixty.people).toHaveLength(60);
    for (const { girth, length, breadth } of sixty.people) {
      expect(judgeGirth(girth).kind).toBe('fine');
      expect(judgeLength(length, girth).kind).toBe('fine');
      expect(judgeBreadth(breadth, girth).kind).toBe('fine');
      expect(judgeRatio(headRatio({ length, breadth })).kind).not.toBe('error');
    }
  });

  it('have a narrower head than the usual range one time in twenty or so', () => {
    expect(ansur2.pooled.ratio.p5).toBeCloseTo(USUAL_RATIOS.least, 2);
    const narrow = sixty.people.filter(
      ({ length, breadth }) => judgeRatio(breadth / length).kind === 'warning',
    );
    expect(narrow.length).toBeGreaterThan(0);
    expect(narrow.length / sixty.people.length).toBeLessThan(0.1);
  });

  it('are mostly a little narrower than a head that was not measured is taken to be', () => {
    expect(USUAL_RATIO).toBeGreaterThan(ansur2.pooled.ratio.p50);
    expect(USUAL_RATIO).toBeLessThan(ansur2.pooled.ratio.p95);
  });
});

// World Health Organization, WHO Child Growth Standards: head circumference-for-age.
describe('babies and children to five years', () => {
  const rows = [...who.boys, ...who.girls] as [number, number, number, number][];

  it('span the range given for them, from three standard deviations below to three above', () => {
    expect(rows).toHaveLength(122);
    expect(SMALL_CHILDREN.girth.least / 10).toBe(Math.min(...rows.map(([, low]) => low)));
    expect(SMALL_CHILDREN.girth.most / 10).toBe(Math.max(...rows.map(([, , , high]) => high)));
  });

  it('get no warning at any month', () => {
    for (const [month, ...girths] of rows)
      for (const girth of girths) expect(judgeGirth(girth * 10).kind, `month ${month}`).toBe('fine');
  });
});

// Snyder and others, Anthropometry of Infants, Children, and Youths to Age 18 for Product Safety Design, 1977.
describe('children and young people of the 1977 US survey', () => {
  it('get no warning for girth at any age, from the 5th to the 95th percentile', () => {
    expect(us1977.girth).toHaveLength(17);
    for (const { ageYears, boys, girls } of us1977.girth)
      for (const { p5, p50, p95 } of [boys, girls])
        for (const girth of [p5, p50, p95]) expect(judgeGirth(girth).kind, `${ageYears} years`).toBe('fine');
  });

  it('get none for length, breadth and ratio either, but for the narrowest', () => {
    expect(us1977.shape).toHaveLength(8);
    for (const { ages, boys, girls } of us1977.shape)
      for (const { length, breadth, ratio } of [boys, girls]) {
        for (const mm of [length.p5, length.p50, length.p95]) expect(judgeLength(mm).kind, ages).toBe('fine');
        for (const mm of [breadth.p5, breadth.p50, breadth.p95])
          expect(judgeBreadth(mm).kind, ages).toBe('fine');
        for (const part of [ratio.p50, ratio.p95]) expect(judgeRatio(part).kind, ages).toBe('fine');
      }
  });

  it('from two to four years are the smallest, and their figures are the ones used', () => {
    const girls = us1977.shape.find(({ ages }) => ages === '2 <= age < 4')!.girls;
    expect(TODDLERS).toEqual({ length: girls.length.p5, breadth: girls.breadth.p5 });
  });
});

describe('newborns and adults together', () => {
  it('leave no gap between them', () => {
    expect(SMALL_CHILDREN.girth.most).toBeGreaterThan(ADULTS.girth.least);
    expect(HEAD_GIRTHS).toEqual({ least: 303, most: 635 });
  });
});
