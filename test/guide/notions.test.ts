import { beforeAll, describe, expect, test } from 'vitest';
import type { Values } from '../../src/caps/parameter.ts';
import { fetchStyle, type StyleId } from '../../src/caps/registry.ts';
import type { Cloths } from '../../src/cloth/cloth.ts';
import { shoppingList } from '../../src/cloth/shopping.ts';
import { pathLength } from '../../src/geometry/measure.ts';
import { notionsOf } from '../../src/guide/notions.ts';
import type { Piece } from '../../src/pattern/piece.ts';
import type { Words } from '../../src/words.ts';
import { clothsOf, everyCap, type Written, written } from './caps.ts';

let caps: readonly Written[] = [];
beforeAll(async () => {
  caps = await everyCap();
}, 60_000);

const lengthsIn = (size: Words = []): readonly number[] =>
  size.flatMap((part) => (typeof part !== 'string' && 'mm' in part ? [part.mm] : []));
const capOf = async (style: StyleId, wishes: Values, cloths?: Cloths) =>
  written(await fetchStyle(style), wishes, cloths)!;
const notion = ({ work }: Written, name: RegExp) => notionsOf(work).find((one) => name.test(one.name));
const edge = ({ outline }: Piece, name: string): number =>
  pathLength(outline.find((one) => one.name === name)!.path);

describe('the notions of a cap', () => {
  test('are bought as the booklet names them, size for size', () => {
    for (const { name, work, guide } of caps) {
      const notions = notionsOf(work);
      const bought = shoppingList([{ notions, seams: work.seams, count: 1 }], work.cloths, {}, 'cm').notions;
      const told = guide.notions.filter((one) => one.name !== 'Thread to match');
      const sizes = new Set(told.map((one) => JSON.stringify([one.name, one.words])));
      expect(new Set(bought.map((one) => JSON.stringify([one.name, one.size]))), name).toEqual(sizes);
    }
  });

  test('each have a size', () => {
    for (const { name, work } of caps)
      for (const one of notionsOf(work))
        expect(lengthsIn(one.size).length, `${name}: ${one.name}`).toBeGreaterThan(0);
  });

  test('have a ribbon as long as the sweatband is cut: its joining allowances and what the wash takes are in it', async () => {
    const cloths = clothsOf({ outer: 'denim', lining: 'poplin' });
    const cap = await capOf('bucket', { sweatbandHeight: 32, sideAllowance: 9 }, cloths);
    const [long, wide] = lengthsIn(notion(cap, /ribbon/)!.size);
    const sewn = edge(cap.draft.pattern.pieces.find(({ id }) => id === 'sweatband')!, 'bottom');
    // Poplin shrinks by 3 % in length.
    expect(long).toBeCloseTo(sewn / (1 - 0.03) + 2 * 9, 6);
    expect(wide).toBe(32);
  });

  test('have tape for every seam of a crown that no lining hides, each strip an inch longer than its seam', async () => {
    const cap = await capOf('ball', {});
    const reckoned = cap.draft.pattern.pieces
      .flatMap(({ figures }) => figures)
      .find(({ name }) => name === 'Seams to tape inside')!;
    const seams = cap.work.seams.filter(({ seam }) => seam.kind === 'gore');
    const [long, wide] = lengthsIn(notion(cap, /Bias tape/)!.size);
    expect(long! - 25 * seams.length).toBeCloseTo(lengthsIn(reckoned.worked).at(-1)!, 1);
    // Pressed open, a seam is as wide as both its allowances.
    expect(wide).toBeGreaterThan(2 * cap.draft.pattern.allowances.gore);
    const lined = await capOf('gored', { lined: true });
    expect(notion(lined, /Bias tape/)).toBeUndefined();
    for (const { name, work, guide } of caps)
      expect(
        notionsOf(work).some((one) => /Bias tape/.test(one.name)),
        name,
      ).toBe(guide.steps.some(({ id }) => id === 'tape'));
  });

  test('have an elastic that slides in its casing', async () => {
    for (const casingHeight of [12, 25, 50]) {
      const cap = await capOf('scrub', { backTie: 'elastic', casingHeight, elasticLength: 150 });
      const [long, wide] = lengthsIn(notion(cap, /^Elastic/)!.size);
      expect(long).toBe(150);
      expect(wide).toBeLessThan(casingHeight - 2);
      expect(wide).toBeGreaterThan(casingHeight / 2);
    }
  });
});

test('what cuts a stiffener is a tool of the caps that have one to cut', async () => {
  const shears = /craft knife/;
  const needs = ({ guide }: Written) => guide.tools.some(({ name }) => shears.test(name));
  expect(needs(await capOf('flat-top', {}))).toBe(true);
  expect(needs(await capOf('flat-top', { visorSource: 'insert' }))).toBe(false);
  // A pillbox has no visor.
  expect(needs(await capOf('pillbox', { crownBody: 'stiffener' }))).toBe(true);
  expect(needs(await capOf('pillbox', { crownBody: 'interlining' }))).toBe(false);
});
