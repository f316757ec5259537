import type { Point } from '../../src/geometry/point.ts';

/** Pairs of sides of a closed ring of points that cross: the plain orientation test on every pair, swept by x, apart in y left out. */
export const crossingsOfRing = (ring: readonly Point[]): readonly (readonly [number, number])[] => {
  const sides = ring
    .map((p, i) => ({ i, p, q: ring[(i + 1) % ring.length]! }))
    .filter(({ p, q }) => Math.hypot(p.x - q.x, p.y - q.y) > 1e-9)
    .map((s) => ({
      ...s,
      low: Math.min(s.p.x, s.q.x),
      high: Math.max(s.p.x, s.q.x),
      foot: Math.min(s.p.y, s.q.y),
      top: Math.max(s.p.y, s.q.y),
    }))
    .sort((a, b) => a.low - b.low);
  const found: [number, number][] = [];
  for (const [n, s] of sides.entries()) {
    for (let m = n + 1; m < sides.length && sides[m]!.low <= s.high; m++) {
      const t = sides[m]!;
      if (t.foot > s.top || t.top < s.foot) continue;
      const across = turn(s.p, s.q, t.p) * turn(s.p, s.q, t.q);
      const along = turn(t.p, t.q, s.p) * turn(t.p, t.q, s.q);
      if (across < 0 && along < 0 && !touches(s, t)) found.push([s.i, t.i]);
    }
  }
  return found;
};

interface Side {
  readonly p: Point;
  readonly q: Point;
}

const turn = (a: Point, b: Point, c: Point): number => (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);

/** Neighbours share a corner and do not count. */
const touches = (s: Side, t: Side): boolean =>
  [s.p, s.q].some((a) => [t.p, t.q].some((b) => Math.hypot(a.x - b.x, a.y - b.y) < 1e-7));
