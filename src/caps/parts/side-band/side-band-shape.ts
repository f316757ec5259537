import { fitPath } from '../../../geometry/fit.ts';
import { reversed } from '../../../geometry/measure.ts';
import { isRound } from '../../../geometry/oval.ts';
import { offOval } from '../../../geometry/oval-slope.ts';
import { line, type Path, pathEnd, pathStart } from '../../../geometry/path.ts';
import { direction, type Point, point, subtract } from '../../../geometry/point.ts';
import { ringSector } from '../../../geometry/ring-sector.ts';
import { type Strip, unroll } from '../../../geometry/strip.ts';
import { rotated, translated } from '../../../geometry/transform.ts';
import { wholeEdge } from '../../../geometry/whole-edge.ts';
import { dropOf, type End, reachOf, type SideSlope } from './side-slope.ts';
import { tiltedQuarter } from './tilted-quarter.ts';

/** The four edges of one flat side band piece, counter-clockwise, upright about x = 0. */
export interface SideBandShape {
  readonly bottom: Path;
  readonly right: Path;
  readonly top: Path;
  readonly left: Path;
}

/** Rulings in a quarter: chords of about 2 mm, so that the flat edge is within 0.002 mm of its true development. */
const QUARTER_RULINGS = 64;

/** The strip of side band below a level rim, between two parameter angles of the rim, counter-clockwise: left rail the rim, right rail the lower edge. */
export const sideBandStrip = (slope: SideSlope, from: number, to: number): Strip => {
  const reach = reachOf(slope);
  const down = dropOf(slope);
  const count = Math.max(2, Math.round((QUARTER_RULINGS * Math.abs(to - from)) / (Math.PI / 2)));
  const angles = Array.from({ length: count + 1 }, (_, i) => from + ((to - from) * i) / count);
  return {
    left: angles.map((t) => offOval(slope.rim, t, 0, 0)),
    right: angles.map((t) => offOval(slope.rim, t, -reach, down)),
  };
};

/** A half from side to side about the centre front or back, which under a level rim are the same: symmetric about x = 0. */
export const halfShape = (slope: SideSlope, end: End): SideBandShape => {
  if (slope.tilt !== 0) {
    const { top, bottom } = tiltedQuarter(slope, end);
    return closed(wholeEdge(bottom), wholeEdge(top));
  }
  if (isRound(slope.rim)) return ringSector(slope.openingGirth / 2, slope.rimGirth / 2, slope.height);
  const { top, bottom } = developed(slope, Math.PI / 2, Math.PI);
  return closed(wholeEdge(bottom), wholeEdge(top));
};

/** The quarter from the centre front or back (left) to the side (right), standing on the chord of its lower edge. */
export const quarterShape = (slope: SideSlope, end: End): SideBandShape => {
  if (slope.tilt === 0 && isRound(slope.rim))
    return ringSector(slope.openingGirth / 4, slope.rimGirth / 4, slope.height);
  const { top, bottom } = slope.tilt === 0 ? developed(slope, -Math.PI / 2, 0) : tiltedQuarter(slope, end);
  const [from, to] = [pathStart(bottom), pathEnd(bottom)];
  const turn = -direction(subtract(to, from));
  const shift = point(-Math.hypot(to.x - from.x, to.y - from.y) / 2, 0);
  const upright = (path: Path) =>
    translated(rotated(translated(path, subtract(point(0, 0), from)), turn), shift);
  return closed(upright(bottom), upright(top));
};

/** Both edges left to right, rolled flat with the first ruling upright on x = 0 and its foot on the origin. */
const developed = (slope: SideSlope, from: number, to: number) => {
  const flat = unroll(sideBandStrip(slope, from, to));
  const stand = (p: Point) => point(p.y, slope.height - p.x);
  // Rulings of an equal slope stand square to both edges, which gives the fit its end tangents.
  const start = point(1, 0);
  const last = subtract(stand(flat.left.at(-1)!), stand(flat.right.at(-1)!));
  const end = point(last.y / slope.height, -last.x / slope.height);
  return {
    top: fitPath(flat.left.map(stand), { start, end }),
    bottom: fitPath(flat.right.map(stand), { start, end }),
  };
};

const closed = (bottom: Path, topLeftToRight: Path): SideBandShape => {
  const top = reversed(topLeftToRight);
  return {
    bottom,
    right: [line(pathEnd(bottom), pathStart(top))],
    top,
    left: [line(pathEnd(top), pathStart(bottom))],
  };
};
