import { curveAt } from '../../../../src/geometry/curve.ts';
import type { Path } from '../../../../src/geometry/path.ts';

/** Width of a flat gore at a height, mm, by bisection on its right-hand edge. */
export const widthAt = (right: Path, y: number): number => {
  const curve = right.find((c) => y >= c.from.y && y <= c.to.y)!;
  let [low, high] = [0, 1];
  for (let i = 0; i < 60; i++) {
    const t = (low + high) / 2;
    if (curveAt(curve, t).y < y) low = t;
    else high = t;
  }
  return 2 * curveAt(curve, low).x;
};
