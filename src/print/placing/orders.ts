import { type Footprint, sizeOf } from './footprint.ts';

/** Pieces by number, in the orders in which they are tried. */
export type Orders = readonly (readonly number[])[];

/**
 * Orders in which to place pieces, by number: large ones first by several measures, then the same slightly shuffled.
 * Always the same for the same pieces.
 */
export const ordersOf = (pieces: readonly Footprint[], count: number): Orders => {
  const sizes = pieces.map(sizeOf);
  const by = (measure: (i: number) => number): readonly number[] =>
    pieces.map((_, i) => i).sort((a, b) => measure(b) - measure(a) || a - b);
  const orders = [
    by((i) => Math.max(sizes[i]!.width, sizes[i]!.height)),
    by((i) => sizes[i]!.width * sizes[i]!.height),
    by((i) => Math.min(sizes[i]!.width, sizes[i]!.height)),
  ];
  const random = randomOf(pieces.length);
  while (orders.length < count) {
    const from = orders[orders.length % 3]!;
    // Each piece may slip a few places: large ones stay early.
    const rank = new Map(from.map((piece, place) => [piece, place + random() * from.length * 0.5]));
    orders.push([...from].sort((a, b) => rank.get(a)! - rank.get(b)!));
  }
  return orders.slice(0, count);
};

/** Numbers from 0 to 1 by a linear congruence with the multiplier and increment of Numerical Recipes. */
const randomOf = (seed: number): (() => number) => {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
};
