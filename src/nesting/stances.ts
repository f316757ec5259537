import { LAID_CORNERS, LAID_SLACK } from '../geometry/tolerance.ts';
import { fewerCorners } from './fewer-corners.ts';
import { areaOfRing, type Box, boxOf, counterClockwise, moved, type Ring, turn } from './ring.ts';
import { widened } from './widened.ts';

/** An outline about the middle of its box. */
export interface Base {
  /** As it is kept from the others: with half the spacing round it, a hair less, and few corners. */
  readonly ring: Ring;
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
  /** What the ring spans about the place it stands at. */
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

/** The number of an outline, kept from others by a margin, mm. */
export const baseOf = (all: Stances, ring: Ring, margin: number): number => {
  const key = `${margin}:${ring.join(' ')}`;
  const found = all.known.get(key);
  if (found !== undefined) return found;
  const box = boxOf(ring);
  const [x, y] = [(box.x0 + box.x1) / 2, (box.y0 + box.y1) / 2];
  const outline = counterClockwise(moved(ring, 0, -x, -y));
  const size = Math.max(box.x1 - box.x0, box.y1 - box.y0);
  const kept = fewerCorners(widened(outline, margin - LAID_SLACK), Math.min(LAID_CORNERS, size * FEWER));
  const base = all.bases.push({ ring: kept, outline, area: areaOfRing(outline), x, y }) - 1;
  all.known.set(key, base);
  return base;
};

/** Small outlines keep more of their shape: corners within this part of their size may go. */
const FEWER = 0.002;

/** The number of a base at a turn, radians. */
export const stanceOf = (all: Stances, base: number, rotation: number, margin: number): number => {
  const [cosine, sine] = turn(rotation);
  const key = `${base} at ${cosine.toFixed(12)} ${sine.toFixed(12)}`;
  const found = all.known.get(key);
  if (found !== undefined) return found;
  const { ring, outline } = all.bases[base]!;
  const turned = moved(ring, rotation, 0, 0);
  const { x0, y0, x1, y1 } = boxOf(moved(outline, rotation, 0, 0));
  const span = { x0: x0 - margin, y0: y0 - margin, x1: x1 + margin, y1: y1 + margin };
  const stance =
    all.stances.push({ base, rotation, cosine, sine, ring: turned, reach: boxOf(turned), span }) - 1;
  all.known.set(key, stance);
  return stance;
};
