/** A picture's depths: how near to the eye what is seen at each place is. mm. */
export interface DepthMap {
  /** Whether a point this near to the eye is seen there. */
  readonly isSeen: (x: number, y: number, near: number) => boolean;
}

/** Triangles as they are seen: x, y and nearness of each point, mm, and three points for each. */
export interface Faces {
  readonly seen: Float64Array;
  readonly corners: ArrayLike<number>;
}

/** Places in the map across and up, at most. */
const FINE = 420;
/** What is this near (mm) behind the nearest is part of the same surface. */
const SAME_SURFACE = 2.5;

/** Enters triangles into a map of depths. */
export const depthMap = (all: readonly Faces[]): DepthMap => {
  let [left, low, right, high] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const { seen } of all) {
    for (let k = 0; k < seen.length; k += 3) {
      left = Math.min(left, seen[k]!);
      right = Math.max(right, seen[k]!);
      low = Math.min(low, seen[k + 1]!);
      high = Math.max(high, seen[k + 1]!);
    }
  }
  const cell = Math.max(right - left, high - low, 1) / FINE;
  const across = Math.ceil((right - left) / cell) + 3;
  const up = Math.ceil((high - low) / cell) + 3;
  const map = new Float64Array(across * up).fill(-Infinity);
  const column = (x: number) => Math.round((x - left) / cell) + 1;
  const row = (y: number) => Math.round((y - low) / cell) + 1;
  for (const { seen, corners } of all) {
    for (let i = 0; i < corners.length; i += 3) {
      const [a, b, c] = [3 * corners[i]!, 3 * corners[i + 1]!, 3 * corners[i + 2]!];
      const [ax, ay, bx, by, cx, cy] = [
        seen[a]!,
        seen[a + 1]!,
        seen[b]!,
        seen[b + 1]!,
        seen[c]!,
        seen[c + 1]!,
      ];
      const area = (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
      if (Math.abs(area) < 1e-9) continue;
      const [from, to] = [row(Math.min(ay, by, cy)), row(Math.max(ay, by, cy))];
      const [start, end] = [column(Math.min(ax, bx, cx)), column(Math.max(ax, bx, cx))];
      for (let r = from; r <= to; r++) {
        const y = low + (r - 1) * cell;
        for (let q = start; q <= end; q++) {
          const x = left + (q - 1) * cell;
          const s = ((x - ax) * (cy - ay) - (y - ay) * (cx - ax)) / area;
          const t = ((bx - ax) * (y - ay) - (by - ay) * (x - ax)) / area;
          if (s < -1e-9 || t < -1e-9 || s + t > 1 + 1e-9) continue;
          const near = seen[a + 2]! * (1 - s - t) + seen[b + 2]! * s + seen[c + 2]! * t;
          const k = r * across + q;
          if (near > map[k]!) map[k] = near;
        }
      }
    }
  }
  return {
    isSeen: (x, y, near) => {
      const [q, r] = [column(x), row(y)];
      // At an outline half of the places about it show what is behind: one of them is enough.
      for (let dr = -1; dr <= 1; dr++) {
        for (let dq = -1; dq <= 1; dq++) {
          const there = map[(r + dr) * across + q + dq];
          if (there === undefined || near > there - SAME_SURFACE) return true;
        }
      }
      return false;
    },
  };
};
