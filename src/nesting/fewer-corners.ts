import type { Ring } from './ring.ts';

/**
 * A ring with fewer corners that holds the whole of the given one and leaves it nowhere by more than the tolerance, mm.
 * An inward corner is bridged; an edge between two outward ones goes, its neighbours run on until they meet. The
 * cheapest goes first. Counter-clockwise.
 */
export const fewerCorners = (ring: Ring, tolerance: number): Ring => {
  const xs: number[] = [];
  const ys: number[] = [];
  for (let i = 0; i < ring.length; i += 2) {
    xs.push(ring[i]!);
    ys.push(ring[i + 1]!);
  }
  // What each corner already stands outside the true outline, so that what is given away does not add up.
  const given = xs.map(() => 0);
  while (xs.length > 4) {
    let best: Removal | null = null;
    for (let i = 0; i < xs.length; i++) {
      const found = bridge(xs, ys, given, i) ?? extension(xs, ys, given, i);
      if (found !== null && found.cost <= tolerance && (best === null || found.cost < best.cost))
        best = found;
    }
    if (best === null) break;
    xs[best.at] = best.x;
    ys[best.at] = best.y;
    given[best.at] = best.cost;
    const gone = best.gone;
    xs.splice(gone, 1);
    ys.splice(gone, 1);
    given.splice(gone, 1);
  }
  return Float64Array.from(xs.flatMap((x, i) => [x, ys[i]!]));
};

/** One corner fewer: the corner `gone` goes, the corner `at` moves to x, y; the ring then stands outside by the cost. */
interface Removal {
  readonly at: number;
  readonly gone: number;
  readonly x: number;
  readonly y: number;
  readonly cost: number;
}

/** An inward corner left out. */
const bridge = (xs: number[], ys: number[], given: number[], i: number): Removal | null => {
  const count = xs.length;
  const before = (i + count - 1) % count;
  const after = (i + 1) % count;
  const [ux, uy] = [xs[after]! - xs[before]!, ys[after]! - ys[before]!];
  const height = ux * (ys[i]! - ys[before]!) - uy * (xs[i]! - xs[before]!);
  if (height < 0) return null;
  const chord = Math.sqrt(ux * ux + uy * uy);
  const cost = (chord > 0 ? height / chord : 0) + Math.max(given[before]!, given[i]!, given[after]!);
  return { at: before, gone: i, x: xs[before]!, y: ys[before]!, cost };
};

/** The edge from corner i to the next left out: the edges before and after run on until they meet outside it. */
const extension = (xs: number[], ys: number[], given: number[], i: number): Removal | null => {
  const count = xs.length;
  const [a, c, d] = [(i + count - 1) % count, (i + 1) % count, (i + 2) % count];
  const [ux, uy] = [xs[i]! - xs[a]!, ys[i]! - ys[a]!];
  const [vx, vy] = [xs[c]! - xs[d]!, ys[c]! - ys[d]!];
  const [ex, ey] = [xs[c]! - xs[i]!, ys[c]! - ys[i]!];
  const across = ux * vy - uy * vx;
  // Do the two run together, on the outer side of the edge?
  if (!(across < 0)) return null;
  const t = (ex * vy - ey * vx) / across;
  if (!(t >= 0)) return null;
  const [x, y] = [xs[i]! + t * ux, ys[i]! + t * uy];
  const edge = Math.sqrt(ex * ex + ey * ey);
  const height = edge > 0 ? (ey * (x - xs[i]!) - ex * (y - ys[i]!)) / edge : 0;
  if (!(height >= 0)) return null;
  const s = (ex * uy - ey * ux) / across;
  if (!(s >= 0)) return null;
  return { at: i, gone: c, x, y, cost: height + Math.max(given[i]!, given[c]!) };
};
