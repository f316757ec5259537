import type { Axes } from '../../worn/gaze.ts';
import { BEHIND, type Mesh, SEEN } from '../../worn/mesh.ts';

/** The piece that is seen at a place of the picture, mm right and up from the middle of space; null beside the cap. */
export const pieceSeenAt = (mesh: Mesh, { right, up, eye }: Axes, x: number, y: number): string | null => {
  const { position, index, part, parts } = mesh;
  let [nearest, found] = [-Infinity, -1];
  const seen = (axis: Axes['right'], k: number) =>
    axis.x * position[3 * k]! + axis.y * position[3 * k + 1]! + axis.z * position[3 * k + 2]!;
  for (let i = 0; i < index.length; i += 3) {
    const [a, b, c] = [index[i]!, index[i + 1]!, index[i + 2]!];
    const [ax, ay] = [seen(right, a), seen(up, a)];
    const [ux, uy] = [seen(right, b) - ax, seen(up, b) - ay];
    const [vx, vy] = [seen(right, c) - ax, seen(up, c) - ay];
    const area = ux * vy - uy * vx;
    if (area === 0) continue;
    const s = ((x - ax) * vy - (y - ay) * vx) / area;
    const t = (ux * (y - ay) - uy * (x - ax)) / area;
    if (!(s >= 0 && t >= 0 && s + t <= 1)) continue;
    const [face, outside] = [part[2 * a + 1]!, area > 0];
    // Of a lining only the inside is seen.
    if (face >= SEEN.lining && outside) continue;
    const behind = face >= SEEN.lining ? BEHIND : face === SEEN.shell && !outside ? 2 * BEHIND : 0;
    const depth = seen(eye, a) * (1 - s - t) + seen(eye, b) * s + seen(eye, c) * t - behind;
    if (depth > nearest) [nearest, found] = [depth, part[2 * a]!];
  }
  return found < 0 ? null : (parts[found] ?? null);
};
