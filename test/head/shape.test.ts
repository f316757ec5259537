import { describe, expect, it } from 'vitest';
import { judgeArc, judgeBreadth, judgeLength, judgeRatio } from '../../src/head/shape.ts';
import { say } from '../../src/words.ts';

describe('the length and breadth of a head', () => {
  it('may be left out, but not nought or nonsense', () => {
    for (const across of [0, -190, Number.NaN, Infinity]) {
      expect(judgeLength(across).kind).toBe('error');
      expect(judgeBreadth(across).kind).toBe('error');
      expect(judgeArc(across).kind).toBe('error');
    }
  });

  it('are never more than half the girth: there and back across the head is the shortest way round', () => {
    expect(judgeLength(281, 560).kind).toBe('error');
    expect(say(judgeLength(281, 560).message, 'cm')).toContain('half the girth, 28.0 cm');
    expect(judgeLength(279, 560).kind).toBe('warning');
    expect(judgeBreadth(251, 500).kind).toBe('error');
    expect(judgeLength(281).kind).toBe('warning');
  });

  it('are warned of when larger than any adult measured, and when smaller than a toddler’s', () => {
    expect(say(judgeLength(230).message, 'cm')).toMatch(/22\.5 cm \(US Army survey of 2012, ANSUR II\)/);
    expect(say(judgeBreadth(185).message, 'cm')).toMatch(/18\.0 cm \(US Army survey of 2012, ANSUR II\)/);
    expect(say(judgeLength(120).message, 'cm')).toContain('A baby’s can be less');
    expect(judgeBreadth(100).kind).toBe('warning');
    expect(judgeLength(39).kind).toBe('error');
  });
});

describe('breadth by length of a head', () => {
  it('is usual from 0.72 to round', () => {
    for (const ratio of [0.72, 0.8, 1]) expect(judgeRatio(ratio).kind).toBe('fine');
    expect(judgeRatio(0.719).kind).toBe('warning');
    expect(judgeRatio(0.6).kind).toBe('warning');
  });

  it('asks whether length and breadth were changed over where a head is broader than long', () => {
    expect(say(judgeRatio(200 / 155).message, 'cm')).toContain('wrong way round');
  });

  it('is no head outside: none is broader than long, and the narrowest adult is 0.66', () => {
    for (const ratio of [0, 0.599, 1.001, -0.8, Number.NaN, Infinity])
      expect(judgeRatio(ratio).kind).toBe('error');
  });
});

describe('the arc over a head', () => {
  it('is longer than the head is across and shorter than the way round it', () => {
    expect(judgeArc(139, 560).kind).toBe('error');
    expect(judgeArc(561, 560).kind).toBe('error');
    expect(say(judgeArc(561, 560).message, 'cm')).toContain('between 14.0 cm and 56.0 cm for this girth');
    expect(judgeArc(901).kind).toBe('error');
  });

  it('is warned of, as an estimate, when far from the published crown’s', () => {
    for (const arc of [200, 440]) {
      expect(judgeArc(arc, 560).kind).toBe('warning');
      expect(say(judgeArc(arc, 560).message, 'cm')).toMatch(/54\.2 %.*58\.3 %.*an estimate/);
    }
    expect(judgeArc(440).kind).toBe('fine');
    expect(judgeArc(700).kind).toBe('warning');
  });
});
