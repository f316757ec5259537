import type { Sheet } from './sheet.ts';

/** By how much of its length the cloth between knots gives where it gives most, and on the whole, when the cap is put on. */
export const giveOf = (
  drafted: readonly Sheet[],
  worn: readonly Sheet[],
): { readonly most: number; readonly mean: number } => {
  let [most, sum, whole] = [0, 0, 0];
  drafted.forEach((sheet, s) => {
    const after = worn[s]!.at;
    const length = (at: Float64Array, p: number, q: number) =>
      Math.hypot(at[3 * p]! - at[3 * q]!, at[3 * p + 1]! - at[3 * q + 1]!, at[3 * p + 2]! - at[3 * q + 2]!);
    for (let k = 0; k + sheet.columns < sheet.rows * sheet.columns; k++) {
      const one = (q: number) => {
        const [a, b] = [length(sheet.at, k, q), length(after, k, q)];
        if (!(a > 0.5)) return;
        most = Math.max(most, Math.abs(b / a - 1));
        sum += Math.abs(b - a);
        whole += a;
      };
      one(k + sheet.columns);
      if ((k + 1) % sheet.columns !== 0) one(k + 1);
    }
  });
  return { most, mean: whole > 0 ? sum / whole : 0 };
};
