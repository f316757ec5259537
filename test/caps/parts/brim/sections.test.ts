import { describe, expect, test } from 'vitest';
import { defaultsOf, type Values } from '../../../../src/caps/parameter.ts';
import { fetchStyles } from '../../../../src/caps/registry.ts';
import { walker } from '../../../../src/pattern/chain.ts';
import { expectSound, HEADS } from '../../family.ts';

const brimmed = (await fetchStyles()).filter(({ parameters }) => 'brimPieces' in parameters);

/** Whatever says in how many pieces a hat goes round, and how they lie. */
const PIECING: Readonly<Record<string, readonly unknown[]>> = {
  brimPieces: ['2', '3', '4'],
  brimHalves: ['sides', 'centre'],
  brimShape: ['round', 'oval'],
  sideBandPieces: ['1', '2', '4'],
  crown: ['gored', 'tipped'],
  gores: [4, 5, 6, 7, 8, 9, 10, 11, 12],
  frontSeam: ['seam', 'panel'],
  reversible: [false, true],
};

const mixes = (keys: readonly string[]): readonly Values[] =>
  keys.reduce<readonly Values[]>(
    (all, key) => all.flatMap((mix) => PIECING[key]!.map((value) => ({ ...mix, [key]: value }) as Values)),
    [{}],
  );

/** Of a gored crown the side's pieces make no difference, and the other way round; halves alone have a choice of where to meet. */
const tellsApart = (mix: Values): boolean =>
  (mix.crown !== 'gored' || mix.sideBandPieces === '1') &&
  (mix.crown !== 'tipped' || (mix.gores === 4 && mix.frontSeam === 'seam')) &&
  (mix.brimPieces === '2' || mix.brimHalves === 'sides');

describe('a brim in sections', () => {
  // Common practice: a seam that is to be laid against another edge has its place marked there.
  test('has a notch or a seam on the other side at each of its own seams, in every hat and in whatever pieces', () => {
    expect(brimmed.map(({ id }) => id)).toEqual(['bucket', 'sun-hat']);
    for (const style of brimmed) {
      for (const mix of mixes(Object.keys(PIECING).filter((key) => key in style.parameters)).filter(
        tellsApart,
      )) {
        const draft = style.draft({ ...defaultsOf(style.parameters), brimDrop: 0.6, ...mix }, HEADS[3]!);
        const walk = walker(draft.pattern.pieces);
        const rings = draft.pattern.seams.filter(
          ({ a, b }) =>
            [a, b].some((side) => side.every(({ edge }) => edge === 'inner')) && a.length + b.length > 2,
        );
        expect(rings.length).toBeGreaterThan(0);
        for (const { name, a, b } of rings) {
          const [brim, other] = (b.every(({ edge }) => edge === 'inner') ? [b, a] : [a, b]).map(walk);
          const places = [...other!.joints, ...other!.stops.map(({ at }) => at)];
          for (const joint of brim!.joints) {
            const nearest = Math.min(...places.map((at) => Math.abs(at - joint)));
            expect(nearest, `${name}, ${JSON.stringify(mix)}, ${joint}`).toBeLessThan(0.05);
          }
        }
        expectSound(draft);
      }
    }
  }, 120_000);
});
