import { describe, expect, test } from 'vitest';
import { beret } from '../../src/caps/beret/beret.ts';
import { beretParameters } from '../../src/caps/beret/parameters.ts';
import { tamReach } from '../../src/caps/beret/tam-reach.ts';
import { defaultsOf } from '../../src/caps/parameter.ts';
import { areaOf } from '../../src/geometry/area.ts';
import { curveAt } from '../../src/geometry/curve.ts';
import { pathLength } from '../../src/geometry/measure.ts';
import { degrees } from '../../src/units.ts';
import { describeFamily, HEADS, outlineOf } from './family.ts';

const defaults = defaultsOf(beretParameters);
const HEAD = HEADS[3]!;

// Refused only: a whole ring so flat that there is no cloth between its ends.
describeFamily(beret, {
  mostRefused: 18,
  also: [{}, { beretCrown: 'gored' }, { beretCrown: 'gathered' }, { underPieces: '1' }],
});

const draft = (values: Partial<typeof defaults>) => beret.draft({ ...defaults, ...values }, HEAD);
type Draft = ReturnType<typeof draft>;
const piece = ({ pattern }: Draft, id: string) => pattern.pieces.find((p) => p.id === id)!;
const edge = (cap: Draft, id: string, name: string) =>
  pathLength(piece(cap, id).outline.find((e) => e.name === name)!.path);

describe('a beret', () => {
  test('laid flat is a top as large as its under side and the hole of the head together', () => {
    const cap = draft({ underSlope: 0, underPieces: '2' });
    const under = 2 * areaOf(outlineOf(piece(cap, 'sideBandFront')));
    const hole = cap.finishedGirth ** 2 / (4 * Math.PI);
    expect(under + hole).toBeCloseTo(areaOf(outlineOf(piece(cap, 'tip'))), 4);
  });

  test('has flat half rings that are half annuli, their ends in one line', () => {
    const { outline } = piece(draft({ underSlope: 0, underPieces: '2' }), 'sideBandFront');
    const [right, left] = ['right', 'left'].map((n) => outline.find((e) => e.name === n)!.path[0]!);
    for (const y of [right!.to.y, left!.from.y, left!.to.y]) expect(y).toBeCloseTo(right!.from.y, 9);
  });

  test('has the same edge round its top however its under ring slopes or is cut', () => {
    for (const underSlope of [0, 0.3, 1]) {
      for (const underPieces of ['2', '4'] as const) {
        const cap = draft({ underSlope, underPieces });
        expect(edge(cap, 'tip', 'rim')).toBeCloseTo(cap.finishedGirth + 2 * Math.PI * defaults.spread, 6);
      }
    }
  });

  test('is offered in one ring only where the ring opens wide enough to be cut', () => {
    const flat = beret.problems({ ...defaults, underPieces: '1', underSlope: 0 }, HEAD);
    expect(flat.map((p) => p.field)).toEqual(['cap.underSlope']);
    const steeper = { ...defaults, underPieces: '1', underSlope: flat[0]!.nearest! } as const;
    expect(beret.problems(steeper, HEAD)).toEqual([]);
    expect(beret.problems({ ...steeper, underSlope: steeper.underSlope - degrees(2) }, HEAD)).toHaveLength(1);
  });

  test('has gores whose tips make a full turn, so that the top lies flat', () => {
    for (const gores of [4, 5, 8, 12]) {
      const cap = draft({ beretCrown: 'gored', gores });
      const right = piece(cap, 'gore')
        .outline.find((e) => e.name === 'right')!
        .path.at(-1)!;
      if (right.kind !== 'cubic') throw new Error('the long edge of a gore ends in a curve');
      const half = Math.atan2(right.c2.x - right.to.x, right.to.y - right.c2.y);
      // Half the polygon's side over its apothem is the tangent of half a gore's share of the turn.
      expect(2 * gores * half).toBeCloseTo(2 * Math.PI, 9);
    }
  });

  test('has gores that never leave the axis faster than the cloth runs, at any slope, and come in level', () => {
    for (const slope of [0, 0.2, 0.6, degrees(60)]) {
      for (const rimGirth of [670, 900, 1250]) {
        const points = tamReach({ openingGirth: 560, rimGirth, slope }, 8).flatMap((c) =>
          Array.from({ length: 101 }, (_, i) => curveAt(c, i / 100)),
        );
        for (const [i, p] of points.slice(1).entries())
          expect(Math.abs(p.x - points[i]!.x)).toBeLessThanOrEqual(p.y - points[i]!.y + 1e-9);
        const [last, before] = [points.at(-1)!, points.at(-2)!];
        expect((before.x - last.x) / (last.y - before.y)).toBeCloseTo(1, 3);
      }
    }
  });

  test('is as far round at the widest place of its gores as a top with that spread', () => {
    const cap = draft({ beretCrown: 'gored', gores: 8 });
    const widest = Math.max(...outlineOf(piece(cap, 'gore')).map((c) => c.from.x));
    expect(16 * widest).toBeCloseTo(cap.finishedGirth + 2 * Math.PI * defaults.spread, 6);
  });
});
