import type { Sheet } from './sheet.ts';

/** A cap worn to one side: so far down to the wearer's right, and in front, radians. Our own measure. */
const [ASIDE, FORWARD] = [0.13, 0.05];

/** Sheets leant to the wearer's right and a little forward about the middle of the opening. */
export const leant = (sheets: readonly Sheet[]): readonly Sheet[] => {
  const [cosA, sinA, cosF, sinF] = [Math.cos(ASIDE), Math.sin(ASIDE), Math.cos(FORWARD), Math.sin(FORWARD)];
  return sheets.map((sheet) => {
    const at = Float64Array.from(sheet.at);
    for (let k = 0; k < at.length; k += 3) {
      const [x, y, z] = [at[k]!, at[k + 1]!, at[k + 2]!];
      const up = z * cosA - x * sinA;
      at[k] = x * cosA + z * sinA;
      at[k + 1] = y * cosF + up * sinF;
      at[k + 2] = up * cosF - y * sinF;
    }
    return { ...sheet, at };
  });
};
