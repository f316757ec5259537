import type { Point } from '../geometry/point.ts';
import { type Sheet, trianglesIn } from './sheet.ts';

/** The knots about a place on a flat piece and their weights, which make one. */
type Weights = readonly (readonly [number, number])[];

const SLACK = 1e-6;

/** Finds places of the flat piece on its net; null beside it. */
export const placeOnSheet = (sheet: Sheet): ((p: Point) => Weights | null) => {
  const corners = trianglesIn(sheet);
  const { flat } = sheet;
  return (p) => {
    for (let i = 0; i < corners.length; i += 3) {
      const [a, b, c] = [corners[i]!, corners[i + 1]!, corners[i + 2]!];
      const [ax, ay] = [flat[2 * a]!, flat[2 * a + 1]!];
      const [ux, uy] = [flat[2 * b]! - ax, flat[2 * b + 1]! - ay];
      const [vx, vy] = [flat[2 * c]! - ax, flat[2 * c + 1]! - ay];
      const area = ux * vy - uy * vx;
      if (area === 0) continue;
      const s = ((p.x - ax) * vy - (p.y - ay) * vx) / area;
      const t = (ux * (p.y - ay) - uy * (p.x - ax)) / area;
      if (s >= -SLACK && t >= -SLACK && s + t <= 1 + SLACK)
        return [
          [a, 1 - s - t],
          [b, s],
          [c, t],
        ];
    }
    return null;
  };
};
