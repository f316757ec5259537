import { curvePart } from '../../../geometry/curve.ts';
import { developStrip } from '../../../geometry/develop-strip.ts';
import { fitEdge } from '../../../geometry/fit-edge.ts';
import { curveLength, reversed } from '../../../geometry/measure.ts';
import { ovalPoint } from '../../../geometry/oval.ts';
import { arc, line, type Path, pathEnd, pathStart } from '../../../geometry/path.ts';
import { direction, ORIGIN, type Point, point, scale, subtract } from '../../../geometry/point.ts';
import { type Point3, point3 } from '../../../geometry/space.ts';
import { mirrored, rotated, scaled, translated } from '../../../geometry/transform.ts';
import type { TriangleStrip } from '../../../geometry/triangle-strip.ts';
import { triangulateStrip } from '../../../geometry/triangulate-strip.ts';
import { wholeEdge } from '../../../geometry/whole-edge.ts';
import type { OpeningCurve } from './opening-curve.ts';

export interface TopAndSidesWish {
  readonly opening: OpeningCurve;
  /**
   * How the top goes over the head, seen from the wearer's right: x to the front, y up, mm, from where its seams meet the front edge to the
   * back edge. Smooth throughout; level at the start as far as a round front edge reaches forward.
   */
  readonly profile: readonly ProfilePart[];
  /** Half the width of the top at a distance along it from its front end, mm; the opening's widths at both ends. */
  readonly halfWidth: (along: number, length: number) => number;
}

/** One curve of a profile, and into how many steps it is cut: each to turn by less than 20° and to be 4 mm or less. */
export interface ProfilePart {
  readonly curve: Path[number];
  readonly steps: number;
}

/**
 * A cap of one top piece, front to back, and a side on either hand. The top is a cylinder, straight from side to side, so that it rolls
 * out in closed form; a side is the strip between the top's edge and the opening.
 */
export interface TopAndSidesShape {
  /** The edges of the flat top, counter-clockwise, front upwards, symmetric about x = 0, its ends at ± half its length. */
  readonly top: Readonly<Record<'back' | 'right' | 'front' | 'left', Path>>;
  /** From end to end of the top along the profile, mm. */
  readonly length: number;
  /** The edges of the flat side of the wearer's right, counter-clockwise, its lower edge from back (left) to front (right). */
  readonly side: Readonly<Record<'lower' | 'seam', Path>>;
  /** The same in space: the seam from front to back on the wearer's right, and the side from back to front, seam on its left. */
  readonly seam: readonly Point3[];
  readonly sideStrip: TriangleStrip;
}

/** Steps along the opening’s side, of about 5 mm. */
const EDGE_STEPS = 44;

/** Rulings are chosen among so many places a side first: the surface turns slowly, so that few will do. */
const CHOICE = 24;

export const topAndSidesShape = ({ opening, profile, halfWidth }: TopAndSidesWish): TopAndSidesShape => {
  const { places, length } = alongProfile(profile);
  const halves = places.map(({ along }) => halfWidth(along, length));
  const seam = places.map(({ at }, i) => point3(halves[i]!, at.x, at.y));
  const right = fitEdge(places.map(({ along }, i) => point(halves[i]!, length / 2 - along)).reverse());
  const edge = Array.from({ length: EDGE_STEPS + 1 }, (_, i) => {
    const { backAngle, frontAngle, oval } = opening;
    const p = ovalPoint(oval, backAngle + ((frontAngle - backAngle) * i) / EDGE_STEPS);
    return point3(p.x, p.y, 0);
  });
  const sideStrip = triangulateStrip(seam.slice().reverse(), edge, { choice: CHOICE });
  const [backRight, frontRight] = [pathStart(right), pathEnd(right)];
  return {
    top: {
      back: [line(mirror(backRight), backRight)],
      right,
      front: opening.roundFront ? roundFront(opening, frontRight) : [line(frontRight, mirror(frontRight))],
      left: mirrored(right),
    },
    length,
    side: sideShape(sideStrip),
    seam,
    sideStrip,
  };
};

const mirror = ({ x, y }: Point): Point => point(-x, y);

interface Place {
  readonly at: Point;
  /** Along the profile, mm. */
  readonly along: number;
}

/** Points all along the profile and how far along it each is. */
const alongProfile = (profile: readonly ProfilePart[]) => {
  const places: Place[] = [{ at: profile[0]!.curve.from, along: 0 }];
  let length = 0;
  for (const { curve, steps } of profile) {
    for (let i = 0; i < steps; i++) {
      const part = curvePart(curve, i / steps, (i + 1) / steps);
      length += curveLength(part);
      places.push({ at: part.to, along: length });
    }
  }
  return { places, length };
};

/** The oval's front, which on the level start of the top runs into the piece: from its right end to its left. */
const roundFront = ({ oval, frontAngle, front }: OpeningCurve, right: Point): Path => {
  const { halfLength, halfBreadth } = oval;
  const quarter = arc(ORIGIN, point(0, -halfLength), Math.PI / 2 - frontAngle);
  const half = translated(scaled([quarter], halfBreadth / halfLength, 1), point(0, right.y + front.y));
  return reversed(wholeEdge(endingOn(half, right)));
};

/** Rounding aside, the path ends there already. */
const endingOn = (path: Path, to: Point): Path => [...path.slice(0, -1), { ...path.at(-1)!, to }];

const sideShape = (strip: TriangleStrip): TopAndSidesShape['side'] => {
  const { left: seam, right: lower } = developStrip(strip);
  const [from, to] = [pathStart(lower), pathEnd(lower)];
  const middle = scale(point(from.x + to.x, from.y + to.y), 0.5);
  const laid = (path: Path) =>
    rotated(translated(path, subtract(ORIGIN, middle)), -direction(subtract(to, from)));
  return { lower: laid(lower), seam: reversed(laid(seam)) };
};
