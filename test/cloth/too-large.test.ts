import { describe, expect, test } from 'vitest';
import type { ClothSpec } from '../../src/cloth/cloth.ts';
import { type ClothLay, clothLay } from '../../src/cloth/cloth-lay.ts';
import { clothOfKind, kindOf } from '../../src/cloth/kinds.ts';
import { isOfFirstCap, layPieces } from '../../src/cloth/lay-pieces.ts';
import { layTask } from '../../src/cloth/lay-task.ts';
import type { LayCap } from '../../src/cloth/lay-wish.ts';
import { tooLarge } from '../../src/cloth/too-large.ts';
import { defaultSpec } from '../../src/design/default-spec.ts';
import { point } from '../../src/geometry/point.ts';
import { improving } from '../../src/nesting/improve.ts';
import { derive } from '../design/derive.ts';
import { faultsOf } from '../nesting/checker.ts';

const { cap, cloths } = defaultSpec;

const capOf = (values: Record<string, string>, name = 'Cornet’s cap', outer = cloths.outer): LayCap => {
  const wish = {
    ...defaultSpec,
    cap: { ...cap, values: { ...cap.values, ...values } },
    cloths: { ...cloths, outer },
  };
  return { name, cutting: derive(wish).draft!.cutting, count: 1 };
};
const along = capOf({});
const across = capOf({ bandGrain: 'across' });

/** Cut as drawn, from half a metre with a nap. */
const HALF_A_METRE: ClothSpec = { ...cloths.outer, nap: true, length: 500, width: 1400 };

const layOf = (caps: readonly LayCap[], spec: ClothSpec): ClothLay => {
  const wish = { caps, cloth: 'outer', spec } as const;
  const pieces = layPieces(wish);
  const task = layTask(pieces, spec);
  const { layout } = improving(task, 1).next().value;
  expect(faultsOf(task, layout)).toEqual([]);
  return clothLay(wish, pieces, layout);
};

describe('half a metre of corduroy', () => {
  test('is too short for a band of 22 in along the grain, and only for that', () => {
    const lay = layOf([along], HALF_A_METRE);
    expect(lay.left.map(({ piece }) => piece.id)).toEqual(['band']);
    const [band, ...more] = tooLarge(lay);
    expect(more).toEqual([]);
    // 22 in and 1 1/2 in high, with twice 1/4 in of allowance.
    expect(band!.along).toBeCloseTo(22.5 * 25.4, 1);
    expect(band!.across).toBeCloseTo(2 * 25.4, 1);
    expect(band!.fitsAcross).toBe(true);
    expect(band!.piece.piece.grainBy).toBe('bandGrain');
  });

  test('will do with the band cut across the grain, thick and unwashed as it is', () => {
    const corduroy = { ...clothOfKind(kindOf({ kind: 'fine-corduroy' })!, cloths.outer), length: 500 };
    const cut = capOf({ bandGrain: 'across' }, cap.name, corduroy);
    expect(layOf([cut], corduroy).left).toEqual([]);
    expect(layOf([capOf({}, cap.name, corduroy)], corduroy).left).toHaveLength(1);
  });

  test('holds the middle of such a band on its fold, along which the grain runs now', () => {
    const { laid } = layOf([across], { ...HALF_A_METRE, folded: true });
    expect(laid.find(({ piece }) => piece.piece.id === 'band')!.piece.layers).toBe('on the fold');
  });

  test('leaves the seams as they are', () => {
    const lines = ({ cutting }: LayCap) =>
      cutting.pieces.map(({ outline, notches }) => ({ outline, notches }));
    expect(lines(across)).toEqual(lines(along));
  });
});

describe('what is too large', () => {
  test('is nothing where cloth is only short by what else lies on it', () => {
    const lay = layOf([across, across, across], { ...HALF_A_METRE, width: 600 });
    expect(lay.left.length).toBeGreaterThan(0);
    expect(tooLarge(lay)).toEqual([]);
  });

  test('is told for each outline once, and by its cap', () => {
    const lay = layOf([across, capOf({}, 'Horn’s cap')], HALF_A_METRE);
    expect(tooLarge(lay).map(({ piece }) => isOfFirstCap(piece))).toEqual([false]);
    const narrow = layOf([along], { ...HALF_A_METRE, width: 150 });
    const large = tooLarge(narrow).map(({ piece, fitsAcross }) => [piece.piece.id, fitsAcross]);
    expect(large).toContainEqual(['tip', false]);
    expect(large.filter(([id]) => id === 'tip')).toHaveLength(1);
  });

  test('has room on none of the scraps, one of which may be long enough the other way', () => {
    const outline = [point(0, 0), point(300, 0), point(300, 600), point(0, 600)];
    const scraps = [{ outline, flaws: [] }];
    const [band, ...more] = tooLarge(layOf([along], { ...HALF_A_METRE, scraps }));
    expect(more).toEqual([]);
    expect(band!.fitsAcross).toBe(true);
  });
});
