import { describe, expect, test } from 'vitest';
import { type CapToBuyFor, type Needs, shoppingList } from '../../src/cloth/shopping.ts';
import { defaultSpec } from '../../src/design/default-spec.ts';
import { say } from '../../src/words.ts';
import { derive } from '../design/derive.ts';

const capOf = (count: number, values: Readonly<Record<string, number | boolean>> = {}): CapToBuyFor => {
  const { cap } = defaultSpec;
  const wish = { ...defaultSpec, cap: { ...cap, values: { ...cap.values, ...values } } };
  const { pattern, seams } = derive(wish).draft!;
  return { notions: pattern.pieces.flatMap(({ notions = [] }) => notions), seams, count };
};
const priced = (outer: number | null, lining: number | null = null) => ({
  ...defaultSpec.cloths,
  outer: { ...defaultSpec.cloths.outer, price: outer },
  lining: { ...defaultSpec.cloths.lining, price: lining },
});
const needing = (outer: number | null, lining: number | null = null): Needs => ({
  outer: { own: { width: 1400, length: outer }, common: [] },
  lining: { own: { width: 1400, length: lining }, common: [] },
});

describe('what the cloth costs', () => {
  test('is the price of what is bought: for 31 cm a shop cuts off 40 cm, or 3/8 yard', () => {
    const costOf = (unit: 'cm' | 'in') => shoppingList([capOf(1)], priced(20), needing(310), unit).cost;
    expect(costOf('cm')).toBeCloseTo(0.4 * 20, 9);
    expect(costOf('in')).toBeCloseTo((3 / 8) * 0.9144 * 20, 9);
  });

  test('is the sum over the cloths that have a price and find a place, and unknown where none does', () => {
    const costOf = (prices: ReturnType<typeof priced>, needs: Needs) =>
      shoppingList([capOf(1)], prices, needs, 'cm').cost;
    expect(costOf(priced(20, 5), needing(310, 190))).toBeCloseTo(8 + 1, 9);
    expect(costOf(priced(20), needing(310, 190))).toBeCloseTo(8, 9);
    expect(costOf(priced(20, 5), needing(310))).toBeCloseTo(8, 9);
    expect(costOf(priced(null), needing(310, 190))).toBeNull();
  });
});

describe('what is bought besides the cloth', () => {
  const listOf = (...caps: CapToBuyFor[]) => shoppingList(caps, priced(null), needing(310), 'cm');
  /** How many sets of buttons of a size. */
  const buttons = (...caps: CapToBuyFor[]) =>
    listOf(...caps)
      .notions.filter(({ name }) => name === 'Buttons')
      .map(({ size, times }) => [say(size ?? [], 'cm'), times]);

  test('is a set of buttons for each cap, of each size by itself', () => {
    expect(buttons(capOf(1))).toEqual([['2, 1.2 cm across', 1]]);
    expect(buttons(capOf(2))).toEqual([['2, 1.2 cm across', 2]]);
    expect(buttons(capOf(2), capOf(3))).toEqual([['2, 1.2 cm across', 5]]);
    expect(buttons(capOf(2), capOf(1, { buttonDiameter: 15 }))).toEqual([
      ['2, 1.2 cm across', 2],
      ['2, 1.5 cm across', 1],
    ]);
    expect(buttons(capOf(2, { strap: false }))).toEqual([]);
  });

  test('is thread for all caps together', () => {
    const [one, larger] = [listOf(capOf(1)).thread, listOf(capOf(1, { crownFullness: 140 })).thread];
    expect(listOf(capOf(4)).thread).toBeCloseTo(4 * one, 6);
    expect(listOf(capOf(2), capOf(1, { crownFullness: 140 })).thread).toBeCloseTo(2 * one + larger, 6);
    expect(larger).toBeGreaterThan(one);
  });
});
