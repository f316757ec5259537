/**
 * Roots in [0, 1] of a polynomial given by its Bernstein coefficients, ascending. With `touch` (in the unit of the
 * values), a place where it comes that close to zero without crossing counts as one root, and an end that close
 * counts as a root exactly there. A polynomial within `touch` of zero everywhere gives both ends.
 */
export const bernsteinRoots = (b: readonly number[], touch = 0): number[] => {
  let [low, high] = [Infinity, -Infinity];
  for (const value of b) {
    if (value < low) low = value;
    if (value > high) high = value;
  }
  // The polynomial lies between its coefficients: is it all above zero, all below, or all on it?
  if (!(low <= touch && high >= -touch)) return [];
  if (low >= -touch && high <= touch) return [0, 1];
  const knots = [0, ...signChanges(differences(b)), 1];
  const values = knots.map((t) => valueAt(b, t));
  const roots = knots.filter((_, i) => Math.abs(values[i]!) <= touch);
  for (let i = 1; i < knots.length; i++) {
    if (values[i - 1]! >= 0 === values[i]! >= 0) continue;
    const root = rootBetween(b, knots[i - 1]!, knots[i]!);
    // Is it one with a knot that counts already?
    const told = [i - 1, i].some(
      (k) => Math.abs(values[k]!) <= touch && Math.abs(valueAt(b, (knots[k]! + root) / 2)) <= touch,
    );
    if (!told) roots.push(root);
  }
  return roots.sort((p, q) => p - q);
};

/** Where the polynomial changes sign inside (0, 1), ascending. */
const signChanges = (b: readonly number[]): number[] => {
  if (b.every((value) => value >= 0) || b.every((value) => value <= 0)) return [];
  if (b.length === 2) return [b[0]! / (b[0]! - b[1]!)];
  if (b.length === 3) return quadraticChanges(b[0]!, b[1]!, b[2]!);
  // Between two turning points a polynomial is monotone, so each root is fenced in by roots of the derivative.
  const knots = [0, ...signChanges(differences(b)), 1];
  const roots: number[] = [];
  let before = valueAt(b, 0) >= 0;
  for (let i = 1; i < knots.length; i++) {
    const after = valueAt(b, knots[i]!) >= 0;
    if (before !== after) roots.push(rootBetween(b, knots[i - 1]!, knots[i]!));
    before = after;
  }
  return roots;
};

/** Where b0 (1-t)² + 2 b1 t (1-t) + b2 t² changes sign inside (0, 1), ascending. */
export const quadraticChanges = (b0: number, b1: number, b2: number): number[] => {
  // Is it of one sign? So are its coefficients, most times.
  if ((b0 >= 0 && b1 >= 0 && b2 >= 0) || (b0 <= 0 && b1 <= 0 && b2 <= 0)) return [];
  const a = b0 - 2 * b1 + b2;
  const half = b1 - b0;
  const square = half * half - a * b0;
  if (!(square > 0)) return [];
  // Both roots from the larger sum, so that nothing cancels.
  const q = -(half + (half < 0 ? -1 : 1) * Math.sqrt(square));
  const [s, t] = [q / a, b0 / q];
  return (s < t ? [s, t] : [t, s]).filter((root) => root > 0 && root < 1);
};

/** Coefficients of the derivative, but for a factor. */
const differences = (b: readonly number[]): number[] => b.slice(1).map((value, i) => value - b[i]!);

/** The value of the Bernstein form, summed from the highest power of (1 - t) down. */
const valueAt = (b: readonly number[], t: number): number => {
  const n = b.length - 1;
  let [sum, power, choose] = [b[0]!, 1, 1];
  for (let i = 1; i <= n; i++) {
    power *= t;
    choose *= (n - i + 1) / i;
    sum = sum * (1 - t) + choose * power * b[i]!;
  }
  return sum;
};

/** The root between two parameters where the values differ in sign: false position with halved ends (Illinois). */
const rootBetween = (b: readonly number[], from: number, to: number): number => {
  let [p, q] = [from, to];
  let [fp, fq] = [valueAt(b, p), valueAt(b, q)];
  if (fp === 0) return p;
  if (fq === 0) return q;
  for (let i = 0; i < 100 && Math.abs(q - p) > 1e-15; i++) {
    // Every third step halves, lest a steep end hold the fence wide.
    const t = i % 3 === 2 ? (p + q) / 2 : q - (fq * (q - p)) / (fq - fp);
    const f = valueAt(b, t);
    if (f === 0 || t === q || t === p) return t;
    if (f < 0 !== fq < 0) [p, fp] = [q, fq];
    else fp /= 2;
    [q, fq] = [t, f];
  }
  return q;
};
