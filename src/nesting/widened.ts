import { EndType, inflatePathsD, JoinType } from 'clipper2-ts';
import { LAID_GRID } from '../geometry/tolerance.ts';
import { areaOfRing, type Ring } from './ring.ts';

/** Corners sharper than this many times the width are cut off square, still outside the round parallel. */
const MITRE = 2;
const DIGITS = Math.round(-Math.log10(LAID_GRID));

/**
 * A ring, counter-clockwise, with its parallel at a width in mm (inward where negative) in place of it; never nearer
 * than the true parallel outside. Where a piece is too thin for it, the ring itself.
 */
export const widened = (ring: Ring, width: number): Ring => {
  if (width === 0) return ring;
  const rings = parallels(ring, width);
  if (width < 0 && rings.length !== 1) return ring;
  return rings.reduce(
    (widest, one) => (areaOfRing(one) > areaOfRing(widest) ? one : widest),
    rings[0] ?? ring,
  );
};

/** All that lies within a width inside the ring (negative) or about it: none, one or more rings, holes clockwise. */
export const parallels = (ring: Ring, width: number): readonly Ring[] => {
  const path: { x: number; y: number }[] = [];
  for (let i = 0; i < ring.length; i += 2) path.push({ x: ring[i]!, y: ring[i + 1]! });
  return inflatePathsD([path], width, JoinType.Miter, EndType.Polygon, MITRE, DIGITS).map((found) =>
    Float64Array.from(found.flatMap(({ x, y }) => [x, y])),
  );
};
