import { describe, expect, test } from 'vitest';
import { gored } from '../../src/caps/gored/gored.ts';
import { type GoredValues, goredParameters } from '../../src/caps/gored/parameters.ts';
import { defaultsOf } from '../../src/caps/parameter.ts';
import { pathLength } from '../../src/geometry/measure.ts';
import { describeFamily, HEADS } from './family.ts';
import { timesSewn } from './times-sewn.ts';

const defaults = defaultsOf(goredParameters);
const HEAD = HEADS[3]!;
const draft = (values: Partial<GoredValues> = {}) => gored.draft({ ...defaults, ...values }, HEAD);
const namesOf = (values: Partial<GoredValues>) => draft(values).pattern.pieces.map((p) => p.name);

// Refused only: too full or too high for a short crown, a visor longer than half of every head, …
describeFamily(gored, {
  mostRefused: 82,
  also: [
    {},
    { edge: 'sweatband', visorSource: 'insert', goreFullness: 20 },
    { gores: 5, frontSeam: 'panel', strap: true },
  ],
});

describe('a gored cap', () => {
  test('has the pieces of the trade', () => {
    expect(namesOf({})).toEqual([
      'Gore',
      'Button cover',
      'Visor',
      'Visor stiffener',
      'Band',
      'Lining gore',
      'Lining band',
    ]);
    expect(namesOf({ strap: true, lining: false, topButton: false })).toEqual([
      'Gore',
      'Visor',
      'Visor stiffener',
      'Band',
      'Strap',
      'Band facing',
    ]);
    expect(namesOf({ edge: 'sweatband', visorSource: 'none', strap: true })).toEqual([
      'Gore',
      'Button cover',
      'Lining gore',
      'Sweatband',
    ]);
  });

  test('sews every edge of every copy exactly once, and more often only where layers meet at its lower edge', () => {
    for (const gores of [5, 6, 8]) {
      for (const edge of ['band', 'sweatband'] as const) {
        const wish = draft({ gores, edge, frontSeam: 'panel' });
        const layered = edge === 'band' ? ['band bottom'] : ['gore bottom'];
        for (const { piece, copy, edge: name, times } of timesSewn(wish.pattern)) {
          // The cloth round a button is gathered, the stiffener slipped in; the covers of a visor share one seam line.
          if (
            ['topButton', 'stiffener'].includes(piece) ||
            (piece === 'visor' && copy === 1 && name === 'inner')
          )
            continue;
          if (layered.includes(`${piece} ${name}`)) expect(times).toBeGreaterThanOrEqual(1 - 1e-6);
          else if (piece === 'sweatband' && name === 'top') expect(times).toBe(0);
          else expect(times, `${piece} ${copy} ${name}`).toBeCloseTo(1, 6);
        }
        const once = edge === 'band' ? 1 : 2;
        const caught = timesSewn(wish.pattern).filter((u) => layered.includes(`${u.piece} ${u.edge}`));
        const round = caught.reduce((sum, { times, length }) => sum + times * length, 0);
        expect(Math.abs(round - once * wish.finishedGirth - 190)).toBeLessThan(0.05);
      }
    }
  });

  test('has a lining with the same lower edge, shorter and less full by what is taken off it', () => {
    const { pieces } = draft({ liningTake: 4 }).pattern;
    const [shell, lining] = ['gore', 'liningGore'].map((id) => pieces.find((p) => p.id === id)!);
    const measured = (name: string) =>
      [shell!, lining!].map((p) => pathLength(p.dimensions.find((d) => d.name === name)!.along));
    const differences = ['Lower edge', 'Up the middle', 'Widest'].map((name) => {
      const [outer, inner] = measured(name);
      return outer! - inner!;
    });
    for (const [i, wished] of [0, 4, 4 / 8].entries())
      expect(Math.abs(differences[i]! - wished)).toBeLessThan(1e-6);
  });

  test('is as long over the head as half the arc and its room, whether a band takes some of it or not', () => {
    for (const edge of ['band', 'sweatband'] as const) {
      const piece = draft({ edge, bandHeight: 40, crownRoom: 66 }).pattern.pieces[0]!;
      const middle = pathLength(piece.dimensions.find(({ name }) => name === 'Up the middle')!.along);
      expect(Math.abs(middle + (edge === 'band' ? 40 : 0) - HEAD.arc / 2 - 66)).toBeLessThan(1e-6);
    }
  });

  test('has a visor sewn straight to the gores meet their seams and middles with its notches', () => {
    const { pieces } = draft({ edge: 'sweatband', gores: 8, frontSeam: 'seam' }).pattern;
    const at = pieces
      .find(({ id }) => id === 'visor')!
      .notches.filter(({ edge }) => edge === 'inner')
      .map((n) => n.at);
    // The visor's inner edge is 190 mm, a gore's lower edge a little over 71: a seam in the middle, and one either side.
    const half = (HEAD.girth + defaults.ease) / 16;
    const wished = [-2, -1, 0, 1, 2].map((k) => 95 + k * half);
    expect(at.length).toBe(wished.length);
    for (const [i, place] of wished.entries()) expect(Math.abs(at[i]! - place)).toBeLessThan(0.05);
  });

  test('covers its button with a disc twice as wide', () => {
    const cover = draft({ topButtonDiameter: 22 }).pattern.pieces.find(({ id }) => id === 'topButton')!;
    expect(Math.abs(pathLength(cover.outline[0]!.path) - 44 * Math.PI)).toBeLessThan(1e-6);
    expect(cover.cuts).toEqual([{ cloth: 'outer', count: 1 }]);
  });

  test('says which wish stands in the way of a crown that cannot close', () => {
    const fields = (values: Partial<GoredValues>) =>
      gored.problems({ ...defaults, ...values }, HEAD).map(({ field }) => field);
    expect(fields({ crownRoom: -60 })).toEqual(['cap.crownRoom']);
    expect(fields({ crownRoom: 14, goreWidest: 0.5 })).toEqual(['cap.goreWidest']);
    expect(fields({ goreFullness: 300 })).toEqual(['cap.goreFullness']);
  });
});
