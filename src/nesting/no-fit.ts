import { LAID_GRID, LAID_TOUCH } from '../geometry/tolerance.ts';
import { type Cycle, convolution } from './convolution.ts';
import type { Ring } from './ring.ts';
import { summed, twiceArea } from './summed.ts';
import { wholeRing } from './whole-ring.ts';

/**
 * Where one outline may not stand beside another, as rings: their no-fit polygon. A second outline overlaps a first
 * where its origin, seen from the first's, lies inside (odd-even). mm. It comes with a raster that tells which edges
 * matter where, since it is asked millions of times.
 */
export interface NoFit {
  /** Outer rings counter-clockwise, holes clockwise. */
  readonly rings: readonly Ring[];
  /** ax, ay, bx, by and one over the squared length, edge after edge. */
  readonly edges: Float64Array;
  readonly x0: number;
  readonly y0: number;
  /** The raster has as many columns as rows. */
  readonly rows: number;
  readonly rowsPerMm: number;
  readonly columnsPerMm: number;
  /** The edges that each row meets: where they stand in `edges`. */
  readonly rowStarts: Int32Array;
  readonly rowEdges: Uint16Array;
  /** For each cell the edges that may be nearest to a point of it: a count, then where they stand; −1 not known yet. */
  readonly lists: { readonly starts: Int32Array; edges: Uint16Array; used: number };
}

/** Numbers an edge takes. */
const EDGE = 5;

/**
 * The places, of the second ring's origin as seen from the first's, where the second overlaps the first. Both
 * counter-clockwise; the second is turned by the angle whose cosine and sine are given. Off by the grid at most.
 */
export const noFitOf = (first: Ring, second: Ring, cosine: number, sine: number): NoFit => {
  const a = wholeRing(first, 1, 0, 1, 0);
  let rings: readonly Cycle[] = [];
  for (let attempt = 0; attempt < ATTEMPTS; attempt++) {
    const b = wholeRing(second, cosine, sine, -1, attempt);
    const cycles = convolution(a, b);
    if (a.convex && b.convex && cycles.length === 1) return rastered([withoutFlat(cycles[0]!)]);
    const sum = summed(cycles);
    rings = sum.rings;
    if (sum.sound) break;
  }
  return rastered(rings.filter((ring) => !isCrack(ring)));
};

/** How often a sum that does not hold is reckoned again, with corners a grid step or two off. */
const ATTEMPTS = 4;

/** Two edges that run on in one direction as one. */
const withoutFlat = (ring: Cycle): Cycle =>
  ring.filter((p, i) => {
    const o = ring[(i + ring.length - 1) % ring.length]!;
    const q = ring[(i + 1) % ring.length]!;
    return (p.x - o.x) * (q.y - p.y) !== (p.y - o.y) * (q.x - p.x);
  });

/** A hole narrower than the accuracy of the reckoning is none. */
const isCrack = (ring: Cycle): boolean => {
  const twice = twiceArea(ring);
  let round = 0;
  ring.forEach((p, i) => {
    const q = ring[(i + 1) % ring.length]!;
    round += Math.sqrt((q.x - p.x) ** 2 + (q.y - p.y) ** 2);
  });
  return twice <= 0 && -twice * LAID_GRID < (round * LAID_TOUCH) / 4;
};

const rastered = (cycles: readonly Cycle[]): NoFit => {
  const rings = cycles.map((cycle) =>
    Float64Array.from(cycle.flatMap(({ x, y }) => [x * LAID_GRID, y * LAID_GRID])),
  );
  const edges = edgesOf(rings);
  const count = edges.length / EDGE;
  const rows = Math.max(4, Math.min(20, Math.round(2.5 * Math.sqrt(count))));
  let [x0, y0, x1, y1] = [Infinity, Infinity, -Infinity, -Infinity];
  for (let e = 0; e < edges.length; e += EDGE) {
    x0 = Math.min(x0, edges[e]!);
    x1 = Math.max(x1, edges[e]!);
    y0 = Math.min(y0, edges[e + 1]!);
    y1 = Math.max(y1, edges[e + 1]!);
  }
  const [rowsPerMm, columnsPerMm] = [rows / (y1 - y0), rows / (x1 - x0)];
  const { rowStarts, rowEdges } = rowsOf(edges, rows, y0, rowsPerMm);
  const lists = { starts: new Int32Array(rows * rows).fill(-1), edges: new Uint16Array(64), used: 0 };
  return { rings, edges, x0, y0, rows, rowsPerMm, columnsPerMm, rowStarts, rowEdges, lists };
};

const edgesOf = (rings: readonly Ring[]): Float64Array => {
  const edges: number[] = [];
  for (const ring of rings) {
    for (let i = 0; i < ring.length; i += 2) {
      const next = (i + 2) % ring.length;
      const [ax, ay, bx, by] = [ring[i]!, ring[i + 1]!, ring[next]!, ring[next + 1]!];
      const squared = (bx - ax) ** 2 + (by - ay) ** 2;
      edges.push(ax, ay, bx, by, squared > 0 ? 1 / squared : 0);
    }
  }
  return Float64Array.from(edges);
};

/** A hair more than a row's own height, so that rounding leaves no edge out. */
const HAIR = 1e-6;

const rowsOf = (edges: Float64Array, rows: number, y0: number, rowsPerMm: number) => {
  const rowEdges: number[] = [];
  const rowStarts = new Int32Array(rows + 1);
  for (let row = 0; row < rows; row++) {
    rowStarts[row] = rowEdges.length;
    for (let e = 0; e < edges.length; e += EDGE) {
      const from = (Math.min(edges[e + 1]!, edges[e + 3]!) - y0) * rowsPerMm;
      const to = (Math.max(edges[e + 1]!, edges[e + 3]!) - y0) * rowsPerMm;
      if (from <= row + 1 + HAIR && to >= row - HAIR && to > from) rowEdges.push(e);
    }
  }
  rowStarts[rows] = rowEdges.length;
  return { rowStarts, rowEdges: Uint16Array.from(rowEdges) };
};

/** Finds the edges that may be nearest to a point of a cell, and gives where they now stand in the lists. */
export const nearestIn = (noFit: NoFit, row: number, column: number): number => {
  const { edges, lists, rows, rowsPerMm, columnsPerMm } = noFit;
  const x = noFit.x0 + (column + 0.5) / columnsPerMm;
  const y = noFit.y0 + (row + 0.5) / rowsPerMm;
  const distances = distancesFrom(edges, x, y);
  // A nearest edge of any point is at most one diagonal further from the middle than the middle's own.
  const reach =
    Math.sqrt(columnsPerMm ** -2 + rowsPerMm ** -2) * (1 + HAIR) + distances.reduce((a, b) => Math.min(a, b));
  const near: number[] = [];
  distances.forEach((distance, k) => {
    if (distance <= reach) near.push(k * EDGE);
  });
  const start = lists.used;
  lists.used += near.length + 1;
  if (lists.used > lists.edges.length) {
    const longer = new Uint16Array(Math.max(lists.used, lists.edges.length * 2));
    longer.set(lists.edges);
    lists.edges = longer;
  }
  lists.edges[start] = near.length;
  lists.edges.set(near, start + 1);
  lists.starts[row * rows + column] = start;
  return start;
};

const distancesFrom = (edges: Float64Array, x: number, y: number): Float64Array => {
  const distances = new Float64Array(edges.length / EDGE);
  for (let e = 0; e < edges.length; e += EDGE) {
    const [ax, ay] = [edges[e]! - x, edges[e + 1]! - y];
    const [dx, dy] = [edges[e + 2]! - edges[e]!, edges[e + 3]! - edges[e + 1]!];
    const t = Math.min(1, Math.max(0, -(ax * dx + ay * dy) * edges[e + 4]!));
    distances[e / EDGE] = Math.sqrt((ax + t * dx) ** 2 + (ay + t * dy) ** 2);
  }
  return distances;
};
