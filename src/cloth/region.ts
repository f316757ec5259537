import { type Box, boxOf } from '../geometry/box.ts';
import type { Point } from '../geometry/point.ts';

/** What lies within a ring, or all but that, mm. */
export interface Region {
  /** Corners, counter-clockwise. */
  readonly ring: readonly Point[];
  readonly within: boolean;
  /** What the ring spans. */
  readonly box: Box;
}

/** The region within a ring that runs either way round; without `within` all that lies about it. */
export const regionOf = (ring: readonly Point[], within = true): Region => ({
  ring: twiceArea(ring) < 0 ? ring.toReversed() : ring,
  within,
  box: boxOf(ring),
});

const twiceArea = (ring: readonly Point[]): number => {
  let sum = 0;
  let before = ring[ring.length - 1]!;
  for (const p of ring) {
    sum += before.x * p.y - p.x * before.y;
    before = p;
  }
  return sum;
};

/** Whether a point lies in a region and further than `depth` from its ring, mm. */
export const isDeepIn = (
  { ring, within, box: { min, max } }: Region,
  { x, y }: Point,
  depth: number,
): boolean => {
  if (within && (x < min.x || x > max.x || y < min.y || y > max.y)) return false;
  let inside = false;
  let p = ring[ring.length - 1]!;
  for (const q of ring) {
    if (p.y > y !== q.y > y && x < p.x + ((q.x - p.x) * (y - p.y)) / (q.y - p.y)) inside = !inside;
    p = q;
  }
  // Most places asked for are not: only for the others are the sides measured.
  if (inside !== within) return false;
  return ring.every((corner, i) => squareToSide(x, y, corner, ring[(i + 1) % ring.length]!) > depth * depth);
};

/** The square of the distance of a place from a side, mm². */
const squareToSide = (x: number, y: number, from: Point, to: Point): number => {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const along = ((x - from.x) * dx + (y - from.y) * dy) / (dx * dx + dy * dy || 1);
  const t = Math.min(1, Math.max(0, along));
  return (x - from.x - t * dx) ** 2 + (y - from.y - t * dy) ** 2;
};
