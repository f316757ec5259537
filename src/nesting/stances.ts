import { LAID_CORNERS, LAID_SLACK } from '../geometry/tolerance.ts';
import { fewerCorners } from './fewer-corners.ts';
import { areaOfRing, type Box, boxOf, counterClockwise, moved, type Ring, turn } from './ring.ts';
import { widened } from './widened.ts';

/** An outline about the middle of its box. */
export interface Base {
  /** As it is kept from other pieces: with half the spacing round it, a hair less, and few corners. */
  readonly ring: Ring;
  /** As it is kept from flaws and edges. For what is itself flaw or edge, none. */
  readonly edgeRing: Ring | null;
  /** The outline itself about the same middle, and its area, mm². */
  readonly outline: Ring;
  readonly area: number;
  /** The middle of the box in the frame the outline came in. */
  readonly x: number;
  readonly y: number;
}

/** A base at one turn. */
export interface Stance {
  readonly base: number;
  readonly rotation: number;
  readonly cosine: number;
  readonly sine: number;
  readonly ring: Ring;
  /** What the rings span about the place it stands at. */
  readonly reach: Box;
  /** What has to stay within a room: the span of the outline with half the spacing. */
  readonly span: Box;
}

/** The outlines met so far; those that are the same are kept once. */
export interface Stances {
  readonly bases: Base[];
  readonly stances: Stance[];
  readonly known: Map<string, number>;
}

export const noStances = (): Stances => ({ bases: [], stances: [], known: new Map() });

/** How far a piece is kept from others and from edges, mm. */
export interface Margins {
  readonly half: number;
  readonly edge: number;
}

/** The number of an outline; without margins it is a flaw or an edge. */
export const baseOf = (all: Stances, ring: Ring, margins: Margins | null): number => {
  const key = `${margins === null}:${ring.join(' ')}`;
  const found = all.known.get(key);
  if (found !== undefined) return found;
  const box = boxOf(ring);
  const [x, y] = [(box.x0 + box.x1) / 2, (box.y0 + box.y1) / 2];
  const outline = counterClockwise(moved(ring, 0, -x, -y));
  const size = Math.max(box.x1 - box.x0, box.y1 - box.y0);
  const kept = (margin: number) =>
    fewerCorners(widened(outline, margin - LAID_SLACK), Math.min(LAID_CORNERS, size * FEWER));
  const own = kept(margins?.half ?? 0);
  const edgeRing = margins === null || margins.edge === margins.half ? own : kept(margins.edge);
  const base =
    all.bases.push({
      ring: own,
      edgeRing: margins === null ? null : edgeRing,
      outline,
      area: areaOfRing(outline),
      x,
      y,
    }) - 1;
  all.known.set(key, base);
  return base;
};

/** Small outlines keep more of their shape: corners within this part of their size may go. */
const FEWER = 0.002;

/** The number of a base at a turn, radians; half the spacing, mm. */
export const stanceOf = (all: Stances, base: number, rotation: number, half: number): number => {
  const [cosine, sine] = turn(rotation);
  const key = `${base} at ${cosine.toFixed(12)} ${sine.toFixed(12)}`;
  const found = all.known.get(key);
  if (found !== undefined) return found;
  const { ring, edgeRing, outline } = all.bases[base]!;
  const turned = moved(ring, rotation, 0, 0);
  const { x0, y0, x1, y1 } = boxOf(moved(outline, rotation, 0, 0));
  const span = { x0: x0 - half, y0: y0 - half, x1: x1 + half, y1: y1 + half };
  const reach = both(boxOf(turned), boxOf(moved(edgeRing ?? ring, rotation, 0, 0)));
  const stance = all.stances.push({ base, rotation, cosine, sine, ring: turned, reach, span }) - 1;
  all.known.set(key, stance);
  return stance;
};

const both = (a: Box, b: Box): Box => ({
  x0: Math.min(a.x0, b.x0),
  y0: Math.min(a.y0, b.y0),
  x1: Math.max(a.x1, b.x1),
  y1: Math.max(a.y1, b.y1),
});
