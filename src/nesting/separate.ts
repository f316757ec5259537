import { LAID_TOUCH } from '../geometry/tolerance.ts';
import { type Crowd, measure } from './crowd.ts';
import { settle } from './settle.ts';

/** Rounds without progress after which it is given up, and what counts as progress: overlap down to this part. */
const PATIENCE = 200;
const PROGRESS = 0.98;
/** What a weight grows by in a round, for the slightest and for the deepest overlap, and shrinks by without one. */
const SLIGHT = 1.05;
const DEEP = 1.2;
const FADE = 0.98;

/**
 * Moves pieces one at a time until none overlaps another, or no progress has been made for long: guided local search,
 * where a pair that stays overlapped counts for more and more. (Voudouris and Tsang 1999; for packing, Egeblad,
 * Nielsen and Odgaard 2007; Umetani et al. 2009.) Yields after every piece that was moved; true in the end where all
 * are free. `onBest` is called when the floor is less crowded than ever.
 */
export function* separate(c: Crowd, onBest: () => void): Generator<void, boolean> {
  const { parts, total } = c.floor;
  c.weight.fill(1);
  for (let i = 0; i < total; i++) measure(c, i);
  let least = Infinity;
  for (let stale = 0; stale < PATIENCE; stale++) {
    const { deepest, sum } = overlaps(c);
    if (deepest <= LAID_TOUCH) return true;
    if (sum < least * PROGRESS) stale = 0;
    if (sum < least) {
      least = sum;
      onBest();
    }
    if (least < Infinity) reweigh(c, deepest);
    for (const i of shuffled(c, parts)) {
      if (!isCrowded(c, i)) continue;
      settle(c, i);
      yield;
    }
  }
  return false;
}

/** The deepest overlap of parts, mm, and the sum of all. */
const overlaps = ({ depth, floor: { parts, total } }: Crowd) => {
  let deepest = 0;
  let sum = 0;
  for (let i = 0; i < parts; i++) {
    for (let k = i * total + i + 1; k < (i + 1) * total; k++) {
      const one = depth[k]!;
      sum += one;
      if (one > deepest) deepest = one;
    }
  }
  return { deepest, sum };
};

/** A pair that overlaps counts for more, the deeper the more; the others slowly count for less again. */
const reweigh = ({ depth, weight, floor: { parts, total } }: Crowd, deepest: number): void => {
  const grow = (DEEP - SLIGHT) / deepest;
  for (let i = 0; i < parts; i++) {
    for (let j = i + 1; j < total; j++) {
      const k = i * total + j;
      const one = depth[k]!;
      const now = one > 0 ? weight[k]! * (SLIGHT + grow * one) : Math.max(1, weight[k]! * FADE);
      weight[k] = now;
      weight[j * total + i] = now;
    }
  }
};

const isCrowded = ({ depth, floor: { total } }: Crowd, i: number): boolean => {
  for (let k = i * total; k < (i + 1) * total; k++) if (depth[k]! > LAID_TOUCH) return true;
  return false;
};

const shuffled = (c: Crowd, count: number): readonly number[] => {
  const list: number[] = [];
  for (let i = 0; i < count; i++) if (isCrowded(c, i)) list.push(i);
  for (let k = list.length - 1; k > 0; k--) {
    const other = Math.floor(c.random() * (k + 1));
    const kept = list[k]!;
    list[k] = list[other]!;
    list[other] = kept;
  }
  return list;
};
