import { type Sheet, trianglesIn } from './sheet.ts';

/** The outward unit normal at every knot, three numbers each: the mean of the triangles about it, by their areas. */
export const normalsOf = (sheet: Sheet, corners: readonly number[] = trianglesIn(sheet)): Float64Array => {
  const { at } = sheet;
  const sums = new Float64Array(at.length);
  for (let i = 0; i < corners.length; i += 3) {
    const [p, q, r] = [3 * corners[i]!, 3 * corners[i + 1]!, 3 * corners[i + 2]!];
    const [ux, uy, uz] = [at[q]! - at[p]!, at[q + 1]! - at[p + 1]!, at[q + 2]! - at[p + 2]!];
    const [vx, vy, vz] = [at[r]! - at[p]!, at[r + 1]! - at[p + 1]!, at[r + 2]! - at[p + 2]!];
    const [nx, ny, nz] = [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
    for (const k of [p, q, r]) {
      sums[k] = sums[k]! + nx;
      sums[k + 1] = sums[k + 1]! + ny;
      sums[k + 2] = sums[k + 2]! + nz;
    }
  }
  for (let k = 0; k < sums.length; k += 3) {
    const length = Math.sqrt(sums[k]! ** 2 + sums[k + 1]! ** 2 + sums[k + 2]! ** 2);
    const scale = length > 0 ? 1 / length : 0;
    for (let c = k; c < k + 3; c++) sums[c] = sums[c]! * scale;
  }
  return sums;
};
