import type { Point } from '../geometry/point.ts';
import { type Sheet, trianglesIn } from './sheet.ts';

/** The knots about a place on a flat piece and their weights, which make one. */
type Weights = readonly (readonly [number, number])[];

const SLACK = 1e-6;

/** Finds places of the flat piece on its net; null beside it. */
export const placeOnSheet = (sheet: Sheet): ((p: Point) => Weights | null) => {
  const corners = trianglesIn(sheet);
  const { flat } = sheet;
  const sides = sidesOf(flat, corners);
  // Places that are looked for one after the other lie near each other.
  let last = 0;
  return (p) => {
    for (let n = 0; n < corners.length; n += 3) {
      const i = (last + n) % corners.length;
      const k = (4 * i) / 3;
      if (p.x < sides[k]! || p.x > sides[k + 1]! || p.y < sides[k + 2]! || p.y > sides[k + 3]!) continue;
      const [a, b, c] = [corners[i]!, corners[i + 1]!, corners[i + 2]!];
      const [ax, ay] = [flat[2 * a]!, flat[2 * a + 1]!];
      const [ux, uy] = [flat[2 * b]! - ax, flat[2 * b + 1]! - ay];
      const [vx, vy] = [flat[2 * c]! - ax, flat[2 * c + 1]! - ay];
      const area = ux * vy - uy * vx;
      if (area === 0) continue;
      const s = ((p.x - ax) * vy - (p.y - ay) * vx) / area;
      const t = (ux * (p.y - ay) - uy * (p.x - ax)) / area;
      if (!(s >= -SLACK && t >= -SLACK && s + t <= 1 + SLACK)) continue;
      last = i;
      return [
        [a, 1 - s - t],
        [b, s],
        [c, t],
      ];
    }
    return null;
  };
};

/** The box about each triangle, a little more: left, right, low and high. */
const sidesOf = (flat: Float64Array, corners: readonly number[]): Float64Array => {
  const sides = new Float64Array((4 * corners.length) / 3);
  for (let i = 0; i < corners.length; i += 3) {
    const [a, b, c] = [2 * corners[i]!, 2 * corners[i + 1]!, 2 * corners[i + 2]!];
    const k = (4 * i) / 3;
    sides[k] = Math.min(flat[a]!, flat[b]!, flat[c]!) - SLACK;
    sides[k + 1] = Math.max(flat[a]!, flat[b]!, flat[c]!) + SLACK;
    sides[k + 2] = Math.min(flat[a + 1]!, flat[b + 1]!, flat[c + 1]!) - SLACK;
    sides[k + 3] = Math.max(flat[a + 1]!, flat[b + 1]!, flat[c + 1]!) + SLACK;
  }
  return sides;
};
