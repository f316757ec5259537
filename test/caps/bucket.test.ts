import ellipe from '@stdlib/math-base-special-ellipe';
import { describe, expect, test } from 'vitest';
import { bucket } from '../../src/caps/bucket/bucket.ts';
import { bucketParameters } from '../../src/caps/bucket/parameters.ts';
import { defaultsOf } from '../../src/caps/parameter.ts';
import { pathLength } from '../../src/geometry/measure.ts';
import { type Side, walker } from '../../src/pattern/chain.ts';
import { degrees } from '../../src/units.ts';
import { describeFamily, expectSound, HEADS } from './family.ts';

const defaults = defaultsOf(bucketParameters);
const HEAD = HEADS[3]!;

// Refused only: a ring so level that it closes on itself, and a sweatband higher than the side that it lies in.
describeFamily(bucket, {
  mostRefused: 30,
  also: [{}, { reversible: true, brimPieces: '4', sideBandPieces: '4', brimShape: 'oval' }],
});

describe('a bucket hat', () => {
  test('is sound however its brim and its side are pieced, round and oval', () => {
    for (const brimPieces of ['whole', '2', '3', '4'] as const) {
      for (const sideBandPieces of ['1', '2', '4'] as const) {
        for (const brimShape of ['round', 'oval'] as const) {
          for (const brimHalves of brimPieces === '2'
            ? (['sides', 'centre'] as const)
            : (['sides'] as const)) {
            const brimUnder = brimShape === 'oval' ? 'lining' : 'outer';
            const pieced = { brimPieces, sideBandPieces, brimShape, brimHalves, brimUnder } as const;
            expectSound(bucket.draft({ ...defaults, ...pieced, crownTaper: 60 }, HEAD));
          }
        }
      }
    }
  });

  test('has the pieces of the trade', () => {
    const cut = (values: object) =>
      bucket
        .draft({ ...defaults, ...values }, HEAD)
        .pattern.pieces.map(
          ({ name, cuts }) => `${name} ${cuts.map((c) => `${c.cloth} ${c.count}`).join(', ')}`,
        );
    expect(cut({})).toEqual([
      'Tip outer 1',
      'Side outer 1',
      'Brim outer 2, interlining 1',
      'Lining tip lining 1',
      'Lining side lining 1',
      'Sweatband lining 1',
    ]);
    expect(cut({ reversible: true, lining: false, brimUnder: 'lining', brimBody: 'none' })).toEqual([
      'Tip outer 1',
      'Side outer 1',
      'Brim outer 2',
      'Lining tip outer 1',
      'Lining side outer 1',
    ]);
    expect(cut({ lining: false, brimUnder: 'lining', brimBody: 'stiffener' })).toEqual([
      'Tip outer 1',
      'Side outer 1',
      'Brim outer 1, lining 1, stiffener 1',
      'Sweatband lining 1',
    ]);
  });

  test('is as large inside out as right side out where it can be worn both ways, with a gap to turn it through', () => {
    for (const sideBandPieces of ['1', '2', '4'] as const) {
      const { pieces } = bucket.draft({ ...defaults, reversible: true, sideBandPieces }, HEAD).pattern;
      const lengths = (prefix: string) =>
        pieces
          .filter(({ id }) => id.startsWith(prefix))
          .flatMap(({ outline }) => outline.map(({ path }) => pathLength(path)));
      expect(lengths('liningTip')).toEqual(lengths('tip'));
      expect(lengths('liningSide')).toEqual(lengths('sideBand'));
      const gaps = pieces.flatMap(({ marks }) => marks.filter(({ kind }) => kind === 'stretch'));
      expect(gaps).toHaveLength(1);
      const gap = gaps[0]!;
      expect(gap.kind === 'stretch' && pathLength(gap.path)).toBeGreaterThanOrEqual(90);
    }
  });

  test('sews every edge of every copy: once, or along the opening as often as layers meet there', () => {
    for (const values of [
      {},
      { brimPieces: '3', sideBandPieces: '2', brimShape: 'oval' },
      { reversible: true },
    ] as const) {
      const { pieces, seams } = bucket.draft({ ...defaults, ...values }, HEAD).pattern;
      const used = new Map<string, number>();
      for (const { piece, copy, edge, from, to } of seams.flatMap((s) => [...s.a, ...s.b])) {
        const path = pieces.find((p) => p.id === piece)!.outline.find((e) => e.name === edge)!.path;
        const key = `${piece} ${copy} ${edge}`;
        used.set(key, (used.get(key) ?? 0) + ((to ?? pathLength(path)) - (from ?? 0)) / pathLength(path));
      }
      for (const { id, cuts, outline } of pieces) {
        const copies = cuts
          .filter(({ cloth }) => cloth !== 'interlining' && cloth !== 'stiffener')
          .reduce((sum, { count }) => sum + count, 0);
        for (let copy = 0; copy < copies; copy++) {
          for (const { name, kind } of outline.filter((e) => e.kind !== 'hem')) {
            const times = used.get(`${id} ${copy} ${name}`) ?? 0;
            if (kind !== 'lower') expect(times, `${id} ${copy} ${name}`).toBeCloseTo(1, 9);
            else expect(times, `${id} ${copy} ${name}`).toBeGreaterThan(0.999);
          }
        }
      }
    }
  });

  test('narrows from the opening to the tip by its taper, whatever its shape', () => {
    for (const brimShape of ['round', 'oval'] as const) {
      const { pieces } = bucket.draft({ ...defaults, brimShape, crownTaper: 50 }, HEAD).pattern;
      const along = (id: string, edge: string) =>
        pathLength(pieces.find((p) => p.id === id)!.outline.find((e) => e.name === edge)!.path);
      const girth = HEAD.girth + defaults.ease;
      expect(Math.abs(along('tip', 'rim') - (girth - 50))).toBeLessThan(0.02);
      expect(Math.abs(along('sideBand', 'top') - (girth - 50))).toBeLessThan(0.02);
      expect(Math.abs(along('sideBand', 'bottom') - girth)).toBeLessThan(0.02);
      expect(Math.abs(along('brim', 'inner') - girth)).toBeLessThan(0.02);
    }
  });

  test('on the head’s oval has an opening as long and as broad as that oval within half a millimetre', () => {
    const values = { ...defaults, brimShape: 'oval', crownTaper: 60 } as const;
    const strips = bucket.form(values, HEAD).strips.filter(({ piece }) => piece === 'brim');
    const inner = strips.flatMap(({ strip }) => strip.left);
    const [xs, ys] = [inner.map(({ x }) => x), inner.map(({ y }) => y)];
    const [breadth, length] = [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)];
    expect(breadth / length).toBeCloseTo(0.8, 3);
    // An ellipse 1 long and 0.8 broad is 2·E(1 − 0.8²) round (Abramowitz and Stegun 17.3; stdlib's ellipe).
    expect(Math.abs(length - (HEAD.girth + defaults.ease) / (2 * ellipe(1 - 0.8 ** 2)))).toBeLessThan(0.5);
  });

  test('notches crown and brim where the sections of a brim meet', () => {
    for (const sideBandPieces of ['1', '2'] as const) {
      const values = { ...defaults, brimPieces: '3', sideBandPieces, brimDrop: degrees(10) } as const;
      const { pieces, seams } = bucket.draft(values, HEAD).pattern;
      const lower = seams.find(({ id }) => id === 'lowerEdge')!;
      const [crown, brim] = [lower.a, lower.b].map(walker(pieces)) as [Side, Side];
      expect(brim.joints).toHaveLength(4);
      for (const joint of brim.joints.slice(1, -1)) {
        expect(crown.stops.filter(({ at }) => Math.abs(at - joint) < 0.05)).toHaveLength(1);
      }
    }
  });
});
