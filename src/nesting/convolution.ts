import type { WholeRing } from './whole-ring.ts';

/** A closed walk over the grid. */
export type Cycle = { x: number; y: number }[];

/**
 * The convolution of two rings, counter-clockwise, as closed walks: the sum of the two point sets is where they wind
 * round more than nought times. Each corner of one is joined by those edges of the other whose direction lies in its
 * turn, backward where the turn goes inward. (Guibas, Ramshaw, Stolfi: A kinetic framework for computational
 * geometry, 1983; Wein: Exact and efficient construction of planar Minkowski sums using the convolution method, 2006.)
 */
export const convolution = (a: WholeRing, b: WholeRing): readonly Cycle[] => {
  const steps = stepsBetween(a, b);
  const used = new Uint8Array(steps.to.length);
  const next = Int32Array.from(steps.first);
  const cycles: Cycle[] = [];
  for (let start = 0; start < steps.to.length; start++) {
    if (used[start] === 1) continue;
    const cycle: Cycle = [];
    // As many steps leave a pair of corners as arrive there, so a walk ends only where it began.
    for (let step = start; step >= 0 && used[step] === 0; ) {
      used[step] = 1;
      const state = steps.to[step]!;
      const [i, j] = [Math.floor(state / b.count), state % b.count];
      cycle.push({ x: a.x[i]! + b.x[j]!, y: a.y[i]! + b.y[j]! });
      while (next[state]! >= 0 && used[next[state]!] === 1) next[state] = steps.sibling[next[state]!]!;
      step = next[state]!;
    }
    if (cycle.length > 2) cycles.push(cycle);
  }
  return cycles;
};

/** Steps from one pair of corners to another, those that leave the same pair linked to a list. */
interface Steps {
  readonly to: readonly number[];
  readonly sibling: readonly number[];
  readonly first: Int32Array;
}

const stepsBetween = (a: WholeRing, b: WholeRing): Steps => {
  const to: number[] = [];
  const sibling: number[] = [];
  const first = new Int32Array(a.count * b.count).fill(-1);
  const add = (from: number, target: number): void => {
    sibling.push(first[from]!);
    first[from] = to.push(target) - 1;
  };
  for (let i = 0; i < a.count; i++) {
    for (let j = 0; j < b.count; j++) {
      const here = i * b.count + j;
      const alongB = i * b.count + (j + 1 === b.count ? 0 : j + 1);
      const alongA = (i + 1 === a.count ? 0 : i + 1) * b.count + j;
      if (turnHolds(a, i, b.dx[j]!, b.dy[j]!, true)) {
        if (a.inward[i] === 1) add(alongB, here);
        else add(here, alongB);
      }
      if (turnHolds(b, j, a.dx[i]!, a.dy[i]!, false)) {
        if (b.inward[j] === 1) add(alongA, here);
        else add(here, alongA);
      }
    }
  }
  return { to, sibling, first };
};

/**
 * Whether a direction lies in the turn of a ring at a corner. Of equal directions that of the first ring counts as
 * slightly clockwise of the second's: a turn of the first holds its clockwise end, one of the second the other.
 */
const turnHolds = (ring: WholeRing, i: number, x: number, y: number, first: boolean): boolean => {
  const before = i === 0 ? ring.count - 1 : i - 1;
  const low = ring.inward[i] === 1 ? i : before;
  const high = ring.inward[i] === 1 ? before : i;
  const fromLow = ring.dx[low]! * y - ring.dy[low]! * x;
  const toHigh = x * ring.dy[high]! - y * ring.dx[high]!;
  return first ? fromLow >= 0 && toHigh > 0 : fromLow > 0 && toHigh >= 0;
};
