import { describe, expect, test } from 'vitest';
import type { ClothSpec } from '../../src/cloth/cloth.ts';
import { type ClothLay, clothLay, laidPolygon } from '../../src/cloth/cloth-lay.ts';
import { layOverlaps } from '../../src/cloth/lay-overlaps.ts';
import { type LayPiece, layPieces } from '../../src/cloth/lay-pieces.ts';
import type { LayWish } from '../../src/cloth/lay-wish.ts';
import { defaultSpec } from '../../src/design/default-spec.ts';
import { boxOf } from '../../src/geometry/box.ts';
import { ORIGIN, point } from '../../src/geometry/point.ts';
import type { Cloth } from '../../src/pattern/piece.ts';
import { derive } from '../design/derive.ts';

const { cutting } = derive(defaultSpec).draft!;
const spec = (change: Partial<ClothSpec> = {}): ClothSpec => ({ ...defaultSpec.cloths.outer, ...change });
const wishOf = (cloth: Cloth, change: Partial<ClothSpec> = {}, count = 1): LayWish => ({
  caps: [{ name: 'Cornet’s cap', cutting, count }],
  cloth,
  spec: spec(change),
});
const pieces = (cloth: Cloth, change: Partial<ClothSpec> = {}) => layPieces(wishOf(cloth, change));
const named = (all: readonly LayPiece[], id: string) => all.filter(({ piece }) => piece.id === id);

describe('what has to be laid on a cloth', () => {
  test('is every copy of every piece that is cut from it', () => {
    const all = pieces('outer');
    const counts = cutting.pieces.flatMap(({ cuts }) => cuts.filter((c) => c.cloth === 'outer'));
    expect(all).toHaveLength(counts.reduce((sum, { count }) => sum + count, 0));
    expect(new Set(all.map(({ id }) => id)).size).toBe(all.length);
  });

  test('is as much again for every further cap', () => {
    expect(layPieces(wishOf('outer', {}, 3))).toHaveLength(3 * pieces('outer').length);
    // Two tips are a pair on folded cloth: neither has to lie on the fold.
    const two = named(layPieces(wishOf('outer', { folded: true }, 2)), 'tip');
    expect(two.map(({ layers }) => layers)).toEqual(['both']);
  });

  test('has its grain along the cloth: a band is as long along x as it is cut', () => {
    const [band] = named(pieces('outer'), 'band');
    const { min, max } = boxOf(band!.polygon);
    // Finished girth 22 in and twice 1/4 in of allowance.
    expect(max.x - min.x).toBeCloseTo(22.5 * 25.4, 1);
    expect(max.y - min.y).toBeLessThan(60);
  });

  test('may be turned end for end, but not where the cloth has a nap (common practice)', () => {
    expect(pieces('outer')[0]!.rotations).toEqual([0, Math.PI]);
    expect(pieces('outer', { nap: true })[0]!.rotations).toEqual([0]);
    expect(pieces('outer', { nap: true, bias: true })[0]!.rotations).toHaveLength(3);
  });

  test('keeps to the grain where the cloth will shrink more one way than the other', () => {
    const turning = { cross: true, bias: true, shrinkLength: 0.05, shrinkWidth: 0.02 };
    expect(pieces('outer', turning)[0]!.rotations).toEqual([0, Math.PI]);
    expect(pieces('outer', { ...turning, nap: true })[0]!.rotations).toEqual([0]);
    // What shrinks alike, or has shrunk already, is the same turned.
    for (const change of [{ shrinkWidth: 0.05 }, { washed: true }])
      expect(pieces('outer', { ...turning, ...change })[0]!.rotations).toHaveLength(8);
  });

  test('is half as much on folded cloth for what is cut in pairs, and a half on the fold for a single one', () => {
    const all = pieces('outer', { folded: true });
    expect(named(all, 'sideBand').map(({ layers }) => layers)).toEqual(['both', 'both']);
    expect(named(all, 'visor').map(({ layers }) => layers)).toEqual(['both']);
    const [tip] = named(all, 'tip');
    expect(tip!.layers).toBe('on the fold');
    const { min, max } = boxOf(tip!.polygon);
    // The half stands on its fold, half as high as the tip is across: 26 in round, and 1/4 in of allowance.
    expect(min.y).toBeCloseTo(0, 6);
    expect(max.y).toBeCloseTo((26 / Math.PI / 2 + 0.25) * 25.4, 1);
    // Its own fold runs across the grain, so that it cannot lie on a fold that runs along the cloth.
    expect(named(all, 'band').map(({ layers }) => layers)).toEqual(['one of two']);
  });

  test('is as many face down on folded cloth as are wanted so: each pair gives one, and the single ones the rest', () => {
    const bent = { ...cutting.pieces.find(({ id }) => id === 'visor')!, foldable: false };
    for (const [count, mirrored] of [
      [2, 1],
      [3, 2],
      [3, 1],
      [3, 3],
      [5, 2],
    ] as const) {
      const one = { ...cutting, pieces: [{ ...bent, cuts: [{ cloth: 'outer', count, mirrored } as const] }] };
      const wish = wishOf('outer', { folded: true });
      const laid = layPieces({ ...wish, caps: [{ name: '', cutting: one, count: 1 }] });
      const pairs = laid.filter(({ layers }) => layers === 'both').length;
      const single = laid.filter(({ layers }) => layers === 'one of two');
      expect(2 * pairs + single.length, `${mirrored} of ${count}`).toBe(count);
      const faceDown = single.filter((piece) => piece.mirrored).length;
      expect(pairs + faceDown, `${mirrored} of ${count} face down`).toBe(mirrored);
    }
  });

  test('is without allowance for interlining, which is cut on the stitch line', () => {
    const [band] = named(pieces('interlining'), 'band');
    const { min, max } = boxOf(band!.polygon);
    expect(max.x - min.x).toBeCloseTo(22 * 25.4, 1);
  });

  test('is counter-clockwise, face down or not', () => {
    for (const { polygon, id } of pieces('outer')) {
      const twice = polygon.reduce((sum, p, i) => {
        const q = polygon[(i + 1) % polygon.length]!;
        return sum + p.x * q.y - q.x * p.y;
      }, 0);
      expect(twice, id).toBeGreaterThan(0);
    }
  });
});

describe('a lay that a hand has changed', () => {
  const tip = named(pieces('outer'), 'tip')[0]!;
  const at = (x: number, y: number, piece = 'tip#1', container = 0) => ({
    piece,
    container,
    rotation: 0,
    x,
    y,
  });
  const two = ['tip#1', 'tip#2'].map((id) => ({ ...tip, id }));
  const layOf = (places: readonly (readonly [number, number])[], change: Partial<ClothSpec> = {}): ClothLay =>
    clothLay(wishOf('outer', { length: 500, ...change }), two, {
      placements: places.map(([x, y], i) => at(x, y, `tip#${i + 1}`)),
      unplaced: [],
      length: 500,
      density: 0.5,
    });

  /** As if a hand had moved all. */
  const overlapsOf = (lay: ClothLay) => layOverlaps(lay, new Set(lay.laid.map(({ piece }) => piece.id)));

  test('shows two pieces that lie over each other, and not two that touch', () => {
    // A tip is 26 in round and has 1/4 in of allowance: 8.78 in across as it is cut.
    const across = (26 / Math.PI + 0.5) * 25.4;
    expect(
      [
        ...overlapsOf(
          layOf([
            [120, 120],
            [120 + across - 1, 120],
          ]),
        ),
      ].sort(),
    ).toEqual(['tip#1', 'tip#2']);
    expect(
      overlapsOf(
        layOf([
          [120, 120],
          [120 + across + 0.1, 120],
        ]),
      ).size,
    ).toBe(0);
    expect(
      overlapsOf(
        layOf([
          [120, 120],
          [121, 120],
        ]),
      ).size,
    ).toBe(2);
  });

  test('shows two that lie on the very same place', () => {
    const there = [380, 120] as const;
    const lay = layOf([there, there]);
    expect(overlapsOf(lay).size).toBe(2);
    // Whichever of them the hand has put there.
    expect(layOverlaps(lay, new Set(['tip#1'])).size).toBe(2);
    expect(layOverlaps(lay, new Set(['tip#2'])).size).toBe(2);
  });

  test('shows a piece that reaches over the edge of the cloth', () => {
    expect(overlapsOf(layOf([[100, 120]])).size).toBe(1);
    expect(overlapsOf(layOf([[380, 120]])).size).toBe(0);
    expect(overlapsOf(layOf([[400, 120]])).size).toBe(1);
  });

  test('shows a piece that leaves its scrap, or lies on a flaw of it', () => {
    const square = [point(0, 0), point(300, 0), point(300, 300), point(0, 300)];
    const flaw = [point(250, 250), point(280, 250), point(280, 280)];
    const scraps = [{ outline: square, flaws: [flaw] }];
    expect(overlapsOf(layOf([[120, 120]], { scraps })).size).toBe(0);
    expect(overlapsOf(layOf([[100, 120]], { scraps })).size).toBe(1);
    expect(overlapsOf(layOf([[185, 185]], { scraps })).size).toBe(1);
  });

  test('has every corner where its placement says', () => {
    const [laid] = layOf([[120, 130]]).laid;
    expect(laid!.shift).toEqual(ORIGIN);
    const { min, max } = boxOf(laidPolygon(laid!));
    expect((min.x + max.x) / 2).toBeCloseTo(120, 1);
    expect((min.y + max.y) / 2).toBeCloseTo(130, 1);
  });
});
