import { isRound } from '../../../geometry/oval.ts';
import { type OvalParallel, parallelAngle, parallelGirth } from '../../../geometry/oval-parallel.ts';
import { offOval } from '../../../geometry/oval-slope.ts';
import { ringSector } from '../../../geometry/ring-sector.ts';
import { mirroredShape, type SlopeShape, shapeOnChord, uprightSlope } from '../../../geometry/slope-shape.ts';
import type { Strip } from '../../../geometry/strip.ts';

/** A brim as it is wished: a surface of equal slope off the opening, equally wide all round. mm and radians. */
export interface BrimSlope {
  /** The crown's lower edge, level at height 0. */
  readonly opening: OvalParallel;
  /** Along the slope. */
  readonly width: number;
  /** Below level, less than a quarter turn. */
  readonly drop: number;
}

/** A stretch of the ring, in parts of the girth from the centre back, counter-clockwise seen from above. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

/** Rulings in a full turn: chords of about 2 mm on the opening. */
const RULINGS = 256;

/** The brim between two parameter angles of the opening, counter-clockwise: left rail the opening, right rail the outer edge. */
export const brimStrip = ({ opening, width, drop }: BrimSlope, from: number, to: number): Strip => {
  const count = Math.max(8, Math.ceil((RULINGS * (to - from)) / (2 * Math.PI)));
  const angles = Array.from({ length: count + 1 }, (_, i) => from + ((to - from) * i) / count);
  const { oval, out } = opening;
  const [reach, down] = [width * Math.cos(drop), width * Math.sin(drop)];
  return {
    left: angles.map((t) => offOval(oval, t, out, 0)),
    right: angles.map((t) => offOval(oval, t, out + reach, down)),
  };
};

/** Round the outer edge, mm: 2π · width · cos drop more than the opening, whatever its shape. */
export const outerGirth = ({ opening, width, drop }: BrimSlope): number =>
  parallelGirth(opening) + 2 * Math.PI * width * Math.cos(drop);

/** Whether a stretch of the ring is its own mirror image. */
export const isOwnMirror = ({ opening }: BrimSlope, { from, to }: Span): boolean =>
  isRound(opening.oval) || Number.isInteger((from + to) * 2);

/**
 * A stretch of the brim rolled flat, outer edge at the bottom. Off a round opening it is the handbooks' ring of radius
 * r / cos drop and width more; off an oval its inner edge has κ · cos drop where the opening has κ.
 */
export const brimShape = (slope: BrimSlope, span: Span): SlopeShape => {
  const { opening, width } = slope;
  const part = span.to - span.from;
  if (isRound(opening.oval))
    return ringSector(outerGirth(slope) * part, parallelGirth(opening) * part, width);
  const to = parallelAngle(opening, span.to);
  if (!isOwnMirror(slope, span)) {
    return shapeOnChord(uprightSlope(brimStrip(slope, parallelAngle(opening, span.from), to)));
  }
  const middle = parallelAngle(opening, (span.from + span.to) / 2);
  return mirroredShape(uprightSlope(brimStrip(slope, middle, to)));
};
