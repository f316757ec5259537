import { distance, type Point } from '../../src/geometry/point.ts';

/** Distance from a point to a straight line between two others, ends with it. */
export const toChord = (p: Point, a: Point, b: Point): number => {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const t = Math.min(1, Math.max(0, ((p.x - a.x) * dx + (p.y - a.y) * dy) / (dx * dx + dy * dy || 1)));
  return Math.hypot(p.x - a.x - t * dx, p.y - a.y - t * dy);
};

/** The largest distance from a point of one polygon to the sides of another, both closed, mm. */
export const deviation = (from: readonly Point[], to: readonly Point[]): number => {
  const longest = Math.max(...to.map((p, i) => distance(p, to[(i + 1) % to.length]!)));
  let worst = 0;
  let near = 0;
  for (const p of from) {
    // Start at the side that was nearest to the point before: most others are ruled out by it at once.
    let least = toChord(p, to[near]!, to[(near + 1) % to.length]!);
    for (let i = 0; i < to.length; ) {
      const [a, b] = [to[i]!, to[(i + 1) % to.length]!];
      // From a corner this far off, so many sides lead at best back to as near as is known.
      const sides = Math.floor((distance(p, a) - least) / longest);
      if (sides < 1) {
        const d = toChord(p, a, b);
        if (d < least) [least, near] = [d, i];
      }
      i += Math.max(1, sides);
    }
    worst = Math.max(worst, least);
  }
  return worst;
};
