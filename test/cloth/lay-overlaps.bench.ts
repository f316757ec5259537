import { bench, describe } from 'vitest';
import { type ClothLay, clothLay } from '../../src/cloth/cloth-lay.ts';
import { layOverlaps } from '../../src/cloth/lay-overlaps.ts';
import { layPieces } from '../../src/cloth/lay-pieces.ts';
import { layTask } from '../../src/cloth/lay-task.ts';
import { defaultSpec } from '../../src/design/default-spec.ts';
import { improving } from '../../src/nesting/improve.ts';
import { derive } from '../design/derive.ts';
import { timing } from '../house/processor-time.ts';

const { cutting } = derive(defaultSpec).draft!;

/** The first lay of so many adult flat-top caps. */
const layOf = (count: number): ClothLay => {
  const wish = {
    caps: [{ name: '', cutting, count }],
    cloth: 'outer',
    spec: defaultSpec.cloths.outer,
  } as const;
  const pieces = layPieces(wish);
  return clothLay(wish, pieces, improving(layTask(pieces, wish.spec), 1).next().value.layout);
};

const one = layPieces({
  caps: [{ name: '', cutting, count: 1 }],
  cloth: 'outer',
  spec: defaultSpec.cloths.outer,
}).length;

// All pieces against each other, as if a hand had moved them all, and one alone, as at every move of a hand that drags it.
for (const count of [1, 10, Math.ceil(300 / one)]) {
  const lay = layOf(count);
  const ids = lay.laid.map(({ piece }) => piece.id);
  for (const [moved, byHand] of [
    ['all', new Set(ids)],
    ['one', new Set(ids.slice(0, 1))],
  ] as const)
    describe(`overlaps of a lay of ${count * one} pieces, ${moved} moved by hand`, () => {
      bench(
        'ours',
        () => {
          layOverlaps(lay, byHand);
        },
        timing,
      );
    });
}
