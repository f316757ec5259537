import { describe, expect, test } from 'vitest';
import { defaultsOf } from '../../src/caps/parameter.ts';
import { pillboxParameters } from '../../src/caps/pillbox/parameters.ts';
import { pillbox } from '../../src/caps/pillbox/pillbox.ts';
import { boundsOf } from '../../src/geometry/bounds.ts';
import { ovalOfGirth } from '../../src/geometry/oval.ts';
import { describeFamily, HEADS, outlineOf } from './family.ts';

const defaults = defaultsOf(pillboxParameters);
const HEAD = HEADS[3]!;

// Refused only: a sweatband higher than the side that it lies in.
describeFamily(pillbox, {
  mostRefused: 12,
  also: [
    {},
    {
      tipShape: 'round',
      sideBandPieces: '2',
      crownTaper: 60,
      sideBandHeight: 30,
      sweatbandHeight: 25,
      liningTake: 8,
    },
    { sideBandPieces: '4', crownTaper: 120, crownBody: 'none', lining: false },
  ],
});

describe('a pillbox', () => {
  const piece = (id: string, values: object) =>
    pillbox.draft({ ...defaults, ...values }, HEAD).pattern.pieces.find((p) => p.id === id)!;

  test('has the pieces of the trade', () => {
    const cut = (values: object) =>
      pillbox
        .draft({ ...defaults, ...values }, HEAD)
        .pattern.pieces.map(
          ({ name, cuts }) => `${name} ${cuts.map((c) => `${c.cloth} ${c.count}`).join(', ')}`,
        );
    expect(cut({})).toEqual([
      'Tip outer 1, stiffener 1',
      'Side outer 1, stiffener 1',
      'Lining tip lining 1',
      'Lining side lining 1',
      'Sweatband lining 1',
    ]);
    expect(cut({ lining: false, crownBody: 'interlining', sideBandPieces: '4' })).toEqual([
      'Tip outer 1, interlining 1',
      'Side outer 4, interlining 4',
      'Sweatband lining 1',
    ]);
  });

  test('straight up has the head’s oval of the finished girth for a tip and a rectangle for a side', () => {
    const { halfLength, halfBreadth } = ovalOfGirth(HEAD.girth + defaults.ease, HEAD.ratio);
    const { min, max } = boundsOf(outlineOf(piece('tip', {})));
    expect(max.y - min.y).toBeCloseTo(2 * halfLength, 6);
    expect(max.x - min.x).toBeCloseTo(2 * halfBreadth, 6);
    const side = boundsOf(outlineOf(piece('sideBand', {})));
    // Rolled out in chords of 2 mm: up to 0.02 mm short all the way round.
    expect(Math.abs(side.max.x - side.min.x - HEAD.girth - defaults.ease)).toBeLessThan(0.02);
    expect(side.max.y - side.min.y).toBeCloseTo(defaults.sideBandHeight, 3);
  });

  test('leans in by 5° where the top is 2π · height · sin 5° less round', () => {
    const lean = (5 * Math.PI) / 180;
    const crownTaper = 2 * Math.PI * 80 * Math.sin(lean);
    for (const tipShape of ['round', 'oval'] as const) {
      const side = pillbox
        .form({ ...defaults, tipShape, sideBandHeight: 80, crownTaper }, HEAD)
        .strips.find(({ piece: id }) => id === 'sideBand')!.strip;
      for (const [i, top] of side.left.entries()) {
        const foot = side.right[i]!;
        expect(Math.hypot(top.x - foot.x, top.y - foot.y)).toBeCloseTo(80 * Math.sin(lean), 6);
        expect(top.z - foot.z).toBeCloseTo(80 * Math.cos(lean), 6);
        expect(foot.z).toBeCloseTo(0, 9);
      }
    }
  });
});
