import { describe, expect, test } from 'vitest';
import { defaultsOf } from '../../src/caps/parameter.ts';
import { sunHatParameters } from '../../src/caps/sun-hat/parameters.ts';
import { sunHat } from '../../src/caps/sun-hat/sun-hat.ts';
import { type Side, walker } from '../../src/pattern/chain.ts';
import { degrees } from '../../src/units.ts';
import { describeFamily, expectSound, HEADS } from './family.ts';

const defaults = defaultsOf(sunHatParameters);
const HEAD = HEADS[3]!;

// Refused only: gores that do not reach the middle, and a ring so level that it closes on itself.
describeFamily(sunHat, {
  mostRefused: 60,
  also: [{}, { crown: 'tipped', brimPieces: '3', sideBandPieces: '2' }],
});

describe('a sun hat', () => {
  test('has the pieces of the trade', () => {
    const cut = (values: object) =>
      sunHat
        .draft({ ...defaults, ...values }, HEAD)
        .pattern.pieces.map(
          ({ name, cuts }) => `${name} ${cuts.map((c) => `${c.cloth} ${c.count}`).join(', ')}`,
        );
    expect(cut({})).toEqual([
      'Gore outer 6',
      'Brim, back outer 2, interlining 1',
      'Brim, front outer 2, interlining 1',
      'Lining gore lining 6',
      'Sweatband lining 1',
    ]);
    expect(cut({ crown: 'tipped', brimPieces: '4', brimBody: 'stiffener', lining: false })).toEqual([
      'Tip outer 1',
      'Side outer 1',
      'Brim outer 8, stiffener 4',
      'Sweatband lining 1',
    ]);
  });

  test('is sound and has every gore seam meet a notch or a seam of the brim, however many gores and sections', () => {
    for (const gores of [4, 5, 6, 7, 8, 12]) {
      for (const frontSeam of ['seam', 'panel'] as const) {
        for (const brimPieces of ['whole', '2', '3', '4'] as const) {
          const values = { ...defaults, gores, frontSeam, brimPieces, brimDrop: degrees(30) };
          const draft = sunHat.draft(values, HEAD);
          expectSound(draft);
          const { pieces, seams } = draft.pattern;
          const lower = seams.find(({ id }) => id === 'lowerEdge')!;
          const [crown, brim] = [lower.a, lower.b].map(walker(pieces)) as [Side, Side];
          const places = [...brim.joints, ...brim.stops.map(({ at }) => at)];
          for (const joint of crown.joints) {
            expect(
              places.some((at) => Math.abs(at - joint) < 0.05),
              `${gores} ${frontSeam} ${joint}`,
            ).toBe(true);
          }
        }
      }
    }
  });

  test('has its crown stand about the brim’s inner edge, so that no gap is seen', () => {
    const { strips } = sunHat.form(defaults, HEAD);
    const inner = strips.filter(({ piece }) => piece.startsWith('brim')).flatMap(({ strip }) => strip.left);
    const corners = strips.filter(({ piece }) => piece === 'gore').map(({ strip }) => strip.left[0]!);
    expect(corners).toHaveLength(6);
    for (const p of inner) {
      corners.forEach((a, i) => {
        const b = corners[(i + 1) % 6]!;
        const side = (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x);
        expect(side).toBeGreaterThan(-1e-6);
      });
    }
  });
});
