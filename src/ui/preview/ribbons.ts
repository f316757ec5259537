import type { Point3 } from '../../geometry/space.ts';

type Lists = [number[], number[], number[], number[], number[]];

/** Lines in space as bands of triangles, which the shader spreads. */
export const ribbons = (lines: readonly (readonly Point3[])[]) => {
  const [position, before, after, side, index] = [[], [], [], [], []] as Lists;
  const put = (list: number[], { x, y, z }: Point3) => list.push(x, y, z);
  for (const points of lines) {
    points.forEach((p, i) => {
      for (const s of [1, -1]) {
        put(position, p);
        put(before, points[Math.max(0, i - 1)]!);
        put(after, points[Math.min(points.length - 1, i + 1)]!);
        side.push(s);
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
    index: { data: Uint32Array.from(index) },
  };
};
