import type { Point3 } from '../../geometry/space.ts';
import { BEHIND } from '../../worn/mesh.ts';

type Lists = [number[], number[], number[], number[], number[], number[]];

/** A line in space, of a seam of the shell or of what lies within it. */
export interface SeamPath {
  readonly points: readonly Point3[];
  readonly within: boolean;
}

/** A line is painted so much nearer than it is, mm; one within only so that the lining does not hide it. */
const [NEARER, NEARER_WITHIN] = [4, -BEHIND / 3];

/** Lines in space as bands of triangles, which the shader spreads. */
export const ribbons = (lines: readonly SeamPath[]) => {
  const [position, before, after, side, nearer, index] = [[], [], [], [], [], []] as Lists;
  const put = (list: number[], { x, y, z }: Point3) => list.push(x, y, z);
  for (const { points, within } of lines) {
    points.forEach((p, i) => {
      for (const s of [1, -1]) {
        put(position, p);
        put(before, points[Math.max(0, i - 1)]!);
        put(after, points[Math.min(points.length - 1, i + 1)]!);
        side.push(s);
        nearer.push((within ? NEARER_WITHIN : NEARER) / 1000);
      }
      const k = position.length / 3 - 2;
      if (i > 0) index.push(k - 2, k - 1, k, k - 1, k + 1, k);
    });
  }
  return {
    position: { size: 3, data: Float32Array.from(position) },
    before: { size: 3, data: Float32Array.from(before) },
    after: { size: 3, data: Float32Array.from(after) },
    side: { size: 1, data: Float32Array.from(side) },
    nearer: { size: 1, data: Float32Array.from(nearer) },
    index: { data: Uint32Array.from(index) },
  };
};
