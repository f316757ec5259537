import { describe, expect, test } from 'vitest';
import { flatTop } from '../../src/caps/flat-top/flat-top.ts';
import { flatTopParameters } from '../../src/caps/flat-top/parameters.ts';
import { defaultsOf } from '../../src/caps/parameter.ts';
import { pathLength } from '../../src/geometry/measure.ts';
import { describeFamily, HEADS, outlineOf } from './family.ts';

const defaults = defaultsOf(flatTopParameters);
const HEAD = HEADS[3]!;

// Refused only: a visor longer than half of every head, a strap wider than the least band, …
describeFamily(flatTop, {
  mostRefused: 80,
  also: [{ visorSource: 'drafted' }, { visorSource: 'insert' }, { tipRatio: 0.8, sideBandPieces: '2' }],
});

describe('a flat-top cap', () => {
  test('has the pieces of the trade', () => {
    const { pieces } = flatTop.draft(defaults, HEAD).pattern;
    expect(pieces.map((p) => p.name)).toEqual([
      'Tip',
      'Side band',
      'Visor',
      'Visor stiffener',
      'Band',
      'Strap',
      'Lining tip',
      'Lining side band',
      'Lining band',
    ]);
    expect(pieces.find((p) => p.id === 'visor')!.cuts).toEqual([
      { cloth: 'outer', count: 2 },
      { cloth: 'interlining', count: 1 },
    ]);
  });

  test('sews every edge of every copy exactly once, and the band twice where it holds the visor', () => {
    const { pieces, seams } = flatTop.draft(defaults, HEAD).pattern;
    const used = new Map<string, number>();
    for (const { piece, copy, edge, from, to } of seams.flatMap((s) => [...s.a, ...s.b])) {
      const path = pieces.find((p) => p.id === piece)!.outline.find((e) => e.name === edge)!.path;
      const key = `${piece} ${copy} ${edge}`;
      used.set(key, (used.get(key) ?? 0) + ((to ?? pathLength(path)) - (from ?? 0)) / pathLength(path));
    }
    for (const piece of pieces) {
      if (piece.id === 'stiffener') continue;
      for (let copy = 0; copy < piece.cuts[0]!.count; copy++) {
        for (const edge of piece.outline) {
          // The visor is caught in the lower edge's seam: its two covers share one seam line, sewn as one.
          if (piece.id === 'visor' && copy === 1 && edge.name === 'inner') continue;
          const times = used.get(`${piece.id} ${copy} ${edge.name}`) ?? 0;
          const caught = piece.id === 'band' && edge.name === 'bottom' ? 190 / (HEAD.girth + 12.7) : 0;
          expect(times, `${piece.id} ${copy} ${edge.name}`).toBeCloseTo(1 + caught, 3);
        }
      }
    }
  });

  test('has a tip whose edge is as long round as the crown girth', () => {
    for (const tipRatio of [1, 0.85, 0.72]) {
      const { pieces } = flatTop.draft({ ...defaults, tipRatio }, HEAD).pattern;
      const girth = pathLength(outlineOf(pieces.find((p) => p.id === 'tip')!));
      expect(Math.abs(girth - (HEAD.girth + defaults.ease + defaults.crownFullness))).toBeLessThan(0.05);
    }
  });
});
