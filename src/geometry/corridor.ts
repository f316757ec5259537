/**
 * The rulings that are considered for a strip of n left and m right points: left point i may be joined to the right
 * points from[i] to to[i], both included. Neither ever falls as i grows.
 */
export interface Corridor {
  readonly from: Int32Array;
  readonly to: Int32Array;
}

/** Every ruling there is. */
export const wholeGrid = (n: number, m: number): Corridor => ({
  from: new Int32Array(n),
  to: new Int32Array(n).fill(m - 1),
});

/**
 * The rulings about a way up some of the points: `lefts` and `rights` are the places (ascending, both ends among
 * them) of the points that `steps` (0 left, 1 right) go up by. The corridor reaches to the next such point on every
 * side of the way.
 */
export const corridorAbout = (
  steps: Uint8Array,
  lefts: readonly number[],
  rights: readonly number[],
): Corridor => {
  const [n, m] = [lefts.at(-1)! + 1, rights.at(-1)! + 1];
  const from = new Int32Array(n).fill(m - 1);
  const to = new Int32Array(n);
  let [a, b] = [0, 0];
  for (let k = 0; k <= steps.length; k++) {
    const [low, high] = [rights[Math.max(0, b - 1)]!, rights[Math.min(b + 1, rights.length - 1)]!];
    for (let i = lefts[Math.max(0, a - 1)]!; i <= lefts[Math.min(a + 1, lefts.length - 1)]!; i++) {
      if (low < from[i]!) from[i] = low;
      if (high > to[i]!) to[i] = high;
    }
    if (steps[k] === 0) a++;
    else b++;
  }
  return { from, to };
};
