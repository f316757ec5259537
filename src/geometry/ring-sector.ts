import { arc, line, type Path } from './path.ts';
import { point } from './point.ts';

/** Radians below which a sector's arcs are drawn straight: their centre would be too far off for a computer's numbers. */
const STRAIGHT = 1e-5;

export interface RingSector {
  readonly bottom: Path;
  readonly right: Path;
  readonly top: Path;
  readonly left: Path;
  /** Radius of the bottom edge, mm: + where the centre lies below, − above, Infinity for a rectangle. */
  readonly bottomRadius: number;
  /** Radians, always positive or 0. */
  readonly angle: number;
}

/**
 * The flat strip of a right cone between two lengths of edge (mm) at a slant height (mm), upright about x = 0 with the
 * middle of its bottom edge on the origin. Edges run counter-clockwise. Equal lengths give a rectangle, nearly equal ones straight edges.
 * Small and large radius s·C1/(C2 − C1) and s more, angle (C2 − C1)/s: the handbooks' flaring work
 * (Kittredge, The New Metal Worker Pattern Book; Longfield, Sheet Metal Drafting, 1921, ch. V).
 */
export const ringSector = (bottomLength: number, topLength: number, height: number): RingSector => {
  if (!(bottomLength > 0 && topLength > 0 && height > 0)) {
    throw new RangeError(`a ring sector needs lengths above 0, got ${bottomLength}, ${topLength}, ${height}`);
  }
  const difference = topLength - bottomLength;
  // Are both lengths as good as equal? Then the bow is under a thousandth of a millimetre and the edges are straight.
  if (Math.abs(difference) <= STRAIGHT * height) {
    const [low, high] = [bottomLength / 2, topLength / 2];
    const corners = [point(-low, 0), point(low, 0), point(high, height), point(-high, height)] as const;
    return {
      bottom: [line(corners[0], corners[1])],
      right: [line(corners[1], corners[2])],
      top: [line(corners[2], corners[3])],
      left: [line(corners[3], corners[0])],
      bottomRadius: Number.POSITIVE_INFINITY,
      angle: 0,
    };
  }
  const r = (height * bottomLength) / difference;
  const angle = difference / height;
  const centre = point(0, -r);
  const at = (rho: number, phi: number) => point(rho * Math.sin(phi), -r + rho * Math.cos(phi));
  const bottom = arc(centre, at(r, -angle / 2), -angle);
  const top = arc(centre, at(r + height, angle / 2), angle);
  return {
    bottom: [bottom],
    right: [line(bottom.to, top.from)],
    top: [top],
    left: [line(top.to, bottom.from)],
    bottomRadius: r,
    angle: Math.abs(angle),
  };
};
