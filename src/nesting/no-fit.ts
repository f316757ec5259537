import { Clipper64, ClipType, FillRule } from 'clipper2-ts';
import { LAID_GRID, LAID_TOUCH } from '../geometry/tolerance.ts';
import { type Cycle, convolution } from './convolution.ts';
import type { Ring } from './ring.ts';
import { wholeRing } from './whole-ring.ts';

/**
 * Where one outline may not stand beside another: their no-fit polygon. A second outline overlaps a first where its
 * origin, seen from the first's, lies inside. mm.
 */
export interface NoFit {
  /** If convex, each edge is its outward normal and the distance from the origin: nx, ny, c, then two unused. */
  readonly convex: boolean;
  /** Else each edge is ax, ay, bx, by and one over its squared length; the inside by the odd-even rule. */
  readonly edges: Float64Array;
  /** The rings, outer ones counter-clockwise, holes clockwise. */
  readonly rings: readonly Ring[];
}

/** Numbers an edge takes. */
export const EDGE = 5;

/**
 * The places, of the second ring's origin as seen from the first's, where the second overlaps the first. Both
 * counter-clockwise; the second is turned by the angle whose cosine and sine are given. Off by the grid at most.
 */
export const noFitOf = (first: Ring, second: Ring, cosine: number, sine: number): NoFit => {
  const a = wholeRing(first, 1, 0, 1);
  const b = wholeRing(second, cosine, sine, -1);
  const cycles = convolution(a, b);
  if (a.convex && b.convex && cycles.length === 1) return convexNoFit(cycles[0]!);
  const clipper = new Clipper64();
  clipper.preserveCollinear = false;
  clipper.addSubject(cycles as Cycle[]);
  const rings: Cycle[] = [];
  clipper.execute(ClipType.Union, FillRule.Positive, rings);
  return generalNoFit(rings.filter((ring) => !isCrack(ring)));
};

/** A hole narrower than the accuracy of the reckoning is none. */
const isCrack = (ring: Cycle): boolean => {
  let twice = 0;
  let round = 0;
  ring.forEach((p, i) => {
    const q = ring[(i + 1) % ring.length]!;
    twice += (p.x - ring[0]!.x) * (q.y - ring[0]!.y) - (q.x - ring[0]!.x) * (p.y - ring[0]!.y);
    round += Math.sqrt((q.x - p.x) ** 2 + (q.y - p.y) ** 2);
  });
  return twice <= 0 && -twice * LAID_GRID < (round * LAID_TOUCH) / 4;
};

const convexNoFit = (ring: Cycle): NoFit => {
  const edges: number[] = [];
  ring.forEach((p, i) => {
    const q = ring[(i + 1) % ring.length]!;
    const [dx, dy] = [q.x - p.x, q.y - p.y];
    const length = Math.sqrt(dx * dx + dy * dy);
    if (length > 0) edges.push(dy / length, -dx / length, ((p.x * dy - p.y * dx) / length) * LAID_GRID, 0, 0);
  });
  return { convex: true, edges: Float64Array.from(edges), rings: [ringOn(ring)] };
};

const generalNoFit = (rings: readonly Cycle[]): NoFit => {
  const edges: number[] = [];
  for (const ring of rings) {
    ring.forEach((p, i) => {
      const q = ring[(i + 1) % ring.length]!;
      const squared = ((q.x - p.x) ** 2 + (q.y - p.y) ** 2) * LAID_GRID ** 2;
      edges.push(
        p.x * LAID_GRID,
        p.y * LAID_GRID,
        q.x * LAID_GRID,
        q.y * LAID_GRID,
        squared > 0 ? 1 / squared : 0,
      );
    });
  }
  return { convex: false, edges: Float64Array.from(edges), rings: rings.map(ringOn) };
};

const ringOn = (cycle: Cycle): Ring =>
  Float64Array.from(cycle.flatMap(({ x, y }) => [x * LAID_GRID, y * LAID_GRID]));
