import { beforeAll, describe, expect, test } from 'vitest';
import { defaultsOf, type Values } from '../../src/caps/parameter.ts';
import { fetchStyles } from '../../src/caps/registry.ts';
import type { Style } from '../../src/caps/style.ts';
import { areaOf } from '../../src/geometry/area.ts';
import { pathLength } from '../../src/geometry/measure.ts';
import { type FindingId, findings } from '../../src/guide/fitting/findings.ts';
import { type Fitted, type Found, fittingOf } from '../../src/guide/fitting/fitting-of.ts';
import { say } from '../../src/words.ts';
import { head } from './caps.ts';
import { readingEase } from './flesch.ts';

let styles: readonly Style[] = [];
beforeAll(async () => {
  styles = await fetchStyles();
});

const on = (id: string, wishes: Values = {}): Fitted => {
  const style = styles.find((one) => one.id === id)!;
  const values = { ...defaultsOf(style.parameters), ...wishes };
  return { style, values, head, finishedGirth: style.draft(values, head).finishedGirth };
};
const found = (...ids: FindingId[]): readonly Found[] => ids.map((id) => ({ id }));
const mended = (fitted: Fitted, changes: ReturnType<typeof fittingOf>['changes']): Values => ({
  ...fitted.values,
  ...Object.fromEntries(changes.map(({ key, to }) => [key, to])),
});

describe('a fitting', () => {
  test('names a cause and a change that can be sewn, for every finding and every style', () => {
    const without: string[] = [];
    for (const style of styles) {
      const fitted = on(style.id);
      for (const { id } of findings) {
        const { advice, changes } = fittingOf(found(id), fitted);
        expect(advice).toHaveLength(1);
        expect(say(advice[0]!.cause, 'cm').length).toBeGreaterThan(20);
        if (changes.length === 0) without.push(`${style.id}: ${id}`);
        for (const { key, from, to } of changes) {
          expect(from, `${style.id} ${id}`).toBe(fitted.values[key]);
          expect(to).not.toBe(from);
        }
        expect(style.problems(mended(fitted, changes), head), `${style.id} ${id}`).toEqual([]);
      }
    }
    // Only a hat without a visor cannot slope it, and a crown without such a measure cannot be changed by it.
    const visorless = styles
      .filter(({ parameters }) => !('visorDrop' in parameters))
      .map(({ id }) => `${id}: visorUp`);
    for (const one of visorless) expect(without).toContain(one);
    expect(without.filter((one) => /tight|loose|pinched|ears|temples/.test(one))).toEqual([]);
  });

  test('makes the opening longer or shorter by what the tape or the pins say, measured on the lower edge', () => {
    const lowerEdge = (fitted: Fitted, values: Values): number => {
      const { pattern } = fitted.style.draft(values, head);
      const seam = pattern.seams.find(({ id }) => id === 'lowerEdge')!;
      return seam.a.reduce((sum, { piece, edge, from = 0, to }) => {
        const path = pattern.pieces
          .find(({ id }) => id === piece)!
          .outline.find(({ name }) => name === edge)!.path;
        return sum + (to ?? pathLength(path)) - from;
      }, 0);
    };
    for (const id of ['flat-top', 'gored', 'bucket']) {
      const fitted = on(id, { ease: 20 });
      const before = lowerEdge(fitted, fitted.values);
      const by = (one: FindingId, amount: number): number =>
        lowerEdge(fitted, mended(fitted, fittingOf([{ id: one, amount }], fitted).changes)) - before;
      expect(by('tight', 6)).toBeCloseTo(6, 3);
      expect(by('loose', 5)).toBeCloseTo(-5, 3);
      expect(by('pinched', 8)).toBeCloseTo(-8, 3);
    }
  });

  test('takes cloth from a crown that falls over the ears or collapses, and gives some to one that sits too high, in every style', () => {
    const shell = ({ style }: Fitted, values: Values): number =>
      style
        .draft(values, head)
        .pattern.pieces.flatMap(({ cuts, outline }) =>
          cuts
            .filter(({ cloth }) => cloth === 'outer')
            .map(({ count }) => count * areaOf(outline.flatMap(({ path }) => path))),
        )
        .reduce((sum, area) => sum + area, 0);
    for (const [id, sign] of [
      ['ears', -1],
      ['collapses', -1],
      ['perches', 1],
    ] as const) {
      const rows = new Set<string>();
      for (const style of styles) {
        const fitted = on(style.id);
        for (const change of fittingOf(found(id), fitted).changes) {
          rows.add(change.key);
          const more = shell(fitted, mended(fitted, [change])) - shell(fitted, fitted.values);
          expect(Math.sign(more), `${style.id} ${id}: ${change.key}`).toBe(sign);
        }
      }
      // Every way to mend it is some style's.
      const { remedies } = findings.find((one) => one.id === id)!;
      expect([...rows].sort()).toEqual(remedies.map(({ key }) => key).sort());
    }
  });

  test('moves each the way the trade would: tight wants ease, a visor that points up wants drop, a box wants fullness (common practice)', () => {
    const way = (style: string, id: FindingId, wishes: Values = {}): readonly [string, number] => {
      const [change] = fittingOf(found(id), on(style, wishes)).changes;
      return [change!.key, Math.sign(change!.to - change!.from)];
    };
    expect(way('flat-top', 'tight')).toEqual(['ease', 1]);
    expect(way('flat-top', 'visorUp')).toEqual(['visorDrop', 1]);
    expect(way('flat-top', 'box')).toEqual(['crownFullness', 1]);
    expect(way('flat-top', 'collapses')).toEqual(['crownFullness', -1]);
    expect(way('gored', 'collapses')).toEqual(['goreFullness', -1]);
    expect(way('gored', 'ears')).toEqual(['crownRoom', -1]);
    expect(way('three-piece', 'ears')).toEqual(['crownHeight', -1]);
    expect(way('flat-top', 'temples')).toEqual(['visorLength', -1]);
    expect(way('gored', 'temples', { visorSource: 'none' })).toEqual(['ease', -1]);
    expect(way('flat-top', 'seamsPull')).toEqual(['liningTake', -1]);
    expect(way('flat-top', 'seamsPull', { lining: false })).toEqual(['crownFullness', 1]);
  });

  test('does not contradict itself in silence: what pulls two ways changes nothing and is told', () => {
    const { changes, conflicts } = fittingOf(found('tight', 'pinched', 'visorUp'), on('flat-top'));
    expect(conflicts).toHaveLength(1);
    expect(conflicts[0]!.titles).toEqual(['It is tight', 'I pinched it out at the back']);
    expect(changes.map(({ key }) => key)).toEqual(['visorDrop']);
  });

  test('takes the larger of two that pull one way', () => {
    const fitted = on('flat-top', { ease: 20 });
    const { changes } = fittingOf(
      [
        { id: 'loose', amount: 4 },
        { id: 'pinched', amount: 9 },
      ],
      fitted,
    );
    expect(changes).toHaveLength(1);
    expect(changes[0]!.to).toBeCloseTo(11, 9);
  });

  test('stops at what can be sewn and at the end of the range', () => {
    const fitted = on('flat-top', { ease: 2 });
    const [change] = fittingOf([{ id: 'loose', amount: 500 }], fitted).changes;
    const row = fitted.style.parameters.ease!;
    expect('min' in row && change!.to).toBe('min' in row ? row.min : null);
  });

  test('says what is missing where the range ends before the amount does, and to measure again', () => {
    const wish = (id: FindingId, amount: number, ease: number) =>
      fittingOf([{ id, amount }], on('flat-top', { ease })).advice[0]!;
    const tight = wish('tight', 90, 12.7);
    // 90 mm are wished, and from 12.7 to 40 mm of ease are 27.3.
    expect(tight.change!.to).toBe(40);
    expect(say(tight.missing!, 'cm')).toMatch(
      /the most .*6\.3 cm are still missing\. Measure the head again/,
    );
    expect(say(wish('loose', 30, 12.7).missing!, 'cm')).toMatch(
      /the least .*1\.7 cm .*Measure the head again/,
    );
    expect(wish('tight', 6, 12.7).missing).toBeNull();
    // Where nothing is left to change, it is said all the same.
    const atTheEnd = wish('tight', 6, 40);
    expect(atTheEnd.change).toBeNull();
    expect(say(atTheEnd.missing!, 'cm')).toContain('0.6 cm are still missing');
    expect(say(atTheEnd.cause, 'cm')).toContain('Your head is');
  });

  test('reads easily', () => {
    for (const style of styles) {
      const { advice } = fittingOf(found(...findings.map(({ id }) => id)), on(style.id));
      const text = advice.map(({ cause }) => say(cause, 'cm')).join(' ');
      expect(readingEase(text), style.id).toBeGreaterThanOrEqual(60);
    }
  });
});
