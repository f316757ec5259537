import type { Corridor } from './corridor.ts';

/**
 * What the steps of a strip cost. The ruling from left point i to right point j has the place i·m + j (m right
 * points).
 */
export interface StepCosts {
  /** Cost of the triangle that a step from a ruling makes: a step on the left, a step on the right. */
  readonly left: Float64Array;
  readonly right: Float64Array;
  /**
   * Cost of a ruling by the triangles at its sides, at 4·place + 2·(last step) + (next step), 0 left and 1 right;
   * none if absent.
   */
  readonly turns?: Float64Array;
}

/**
 * The cheapest way from the first ruling to the last, one point on at a time: 0 for a step on the left, 1 on the
 * right. All ways through the corridor are considered ((n + m − 2)!/((n − 1)!(m − 1)!) of them in the whole grid), in
 * time that grows with its rulings, n·m at most: a shortest path through the grid of rulings (C. C. L. Wang and K.
 * Tang, "Optimal boundary triangulations of an interpolating ruled surface", J. Computing and Information Science in
 * Engineering 5(4), 2005). Because a fold depends on the triangles at both its sides, a ruling is kept twice, once
 * for each step that may have led to it. Of equally cheap ways, the one that goes on the left last.
 */
export const cheapestSteps = (m: number, { from, to }: Corridor, costs: StepCosts): Uint8Array => {
  const { left, right, turns } = costs;
  const n = from.length;
  // best[2·place + s]: the least cost of having come to a ruling by step s; before[…]: the step before that one.
  const best = new Float64Array(2 * n * m).fill(Number.POSITIVE_INFINITY);
  const before = new Uint8Array(2 * n * m);
  // At the first ruling nothing has gone before: no step led there, no fold lies there.
  best[0] = 0;
  for (let i = 0; i < n; i++) {
    for (let j = from[i]!; j <= to[i]!; j++) {
      const place = i * m + j;
      for (let step = 0; step < 2; step++) {
        if (step === 0 ? i === 0 : j === 0) continue;
        const last = step === 0 ? place - m : place - 1;
        const folded = last > 0 ? turns : undefined;
        const afterLeft = best[2 * last]! + (folded ? folded[4 * last + step]! : 0);
        const afterRight = best[2 * last + 1]! + (folded ? folded[4 * last + 2 + step]! : 0);
        const triangle = step === 0 ? left[last]! : right[last]!;
        before[2 * place + step] = afterRight < afterLeft ? 1 : 0;
        best[2 * place + step] = Math.min(afterLeft, afterRight) + triangle;
      }
    }
  }
  return walkedBack(n, m, best, before);
};

const walkedBack = (n: number, m: number, best: Float64Array, before: Uint8Array): Uint8Array => {
  const steps = new Uint8Array(n + m - 2);
  let place = n * m - 1;
  let step = best[2 * place + 1]! < best[2 * place]! ? 1 : 0;
  for (let k = steps.length - 1; k >= 0; k--) {
    steps[k] = step;
    const last = before[2 * place + step]!;
    place -= step === 0 ? m : 1;
    step = last;
  }
  return steps;
};
