import type { Point } from '../../src/geometry/point.ts';

/** Pairs of sides of a closed ring of points that cross: the plain orientation test on every pair, swept by x, apart in y left out. */
export const crossingsOfRing = (ring: readonly Point[]): readonly (readonly [number, number])[] => {
  const sides = sidesOf(ring).sort((a, b) => a.low - b.low);
  const found: [number, number][] = [];
  for (let n = 0; n < sides.length; n++) {
    const s = sides[n]!;
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
  readonly i: number;
  readonly p: Point;
  readonly q: Point;
  readonly low: number;
  readonly high: number;
  readonly foot: number;
  readonly top: number;
}

/** The sides that have a length: whole sweeps spend much of their time here. */
const sidesOf = (ring: readonly Point[]): Side[] => {
  const sides: Side[] = [];
  for (let i = 0; i < ring.length; i++) {
    const p = ring[i]!;
    const q = ring[i + 1 < ring.length ? i + 1 : 0]!;
    if (Math.abs(p.x - q.x) <= NOTHING && Math.abs(p.y - q.y) <= NOTHING) continue;
    const [low, high] = p.x < q.x ? [p.x, q.x] : [q.x, p.x];
    const [foot, top] = p.y < q.y ? [p.y, q.y] : [q.y, p.y];
    sides.push({ i, p, q, low, high, foot, top });
  }
  return sides;
};

/** mm. */
const NOTHING = 1e-9;

const turn = (a: Point, b: Point, c: Point): number => (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);

/** Neighbours share a corner and do not count. */
const touches = (s: Side, t: Side): boolean =>
  [s.p, s.q].some((a) => [t.p, t.q].some((b) => Math.hypot(a.x - b.x, a.y - b.y) < 1e-7));
