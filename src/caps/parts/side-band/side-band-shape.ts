import { isRound } from '../../../geometry/oval.ts';
import { offOval } from '../../../geometry/oval-slope.ts';
import { ringSector } from '../../../geometry/ring-sector.ts';
import { mirroredShape, type SlopeShape, shapeOnChord, uprightSlope } from '../../../geometry/slope-shape.ts';
import type { Strip } from '../../../geometry/strip.ts';
import { dropOf, type End, reachOf, type SideSlope } from './side-slope.ts';
import { tiltedEdges } from './tilted-strip.ts';

/** The four edges of one flat side band piece, counter-clockwise, upright about x = 0. */
export type SideBandShape = SlopeShape;

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

/** The whole ring about the centre front: symmetric about x = 0. */
export const wholeShape = (slope: SideSlope): SideBandShape => {
  if (slope.tilt !== 0) return mirroredShape(tiltedEdges(slope, { from: 'front', quarters: 2 }));
  if (isRound(slope.rim)) return ringSector(slope.openingGirth, slope.rimGirth, slope.height);
  return mirroredShape(uprightSlope(sideBandStrip(slope, Math.PI / 2, (3 * Math.PI) / 2)));
};

/** A half from side to side about the centre front or back, which under a level rim are the same: symmetric about x = 0. */
export const halfShape = (slope: SideSlope, end: End): SideBandShape => {
  if (slope.tilt !== 0) return mirroredShape(tiltedEdges(slope, { from: end, quarters: 1 }));
  if (isRound(slope.rim)) return ringSector(slope.openingGirth / 2, slope.rimGirth / 2, slope.height);
  return mirroredShape(uprightSlope(sideBandStrip(slope, Math.PI / 2, Math.PI)));
};

/** The quarter from the centre front or back (left) to the side (right), standing on the chord of its lower edge. */
export const quarterShape = (slope: SideSlope, end: End): SideBandShape => {
  if (slope.tilt !== 0) return shapeOnChord(tiltedEdges(slope, { from: end, quarters: 1 }));
  if (isRound(slope.rim)) return ringSector(slope.openingGirth / 4, slope.rimGirth / 4, slope.height);
  return shapeOnChord(uprightSlope(sideBandStrip(slope, -Math.PI / 2, 0)));
};
