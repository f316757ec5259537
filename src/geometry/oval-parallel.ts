import { type Oval, ovalArc, ovalGirth } from './oval.ts';
import { norm, point } from './point.ts';

/** The level curve at some distance (mm, + outwards) from an oval: where a surface of equal slope stands at another height. */
export interface OvalParallel {
  readonly oval: Oval;
  readonly out: number;
}

/** Its girth, mm: 2π · out more than the oval's, as for every parallel of a closed convex curve. */
export const parallelGirth = ({ oval, out }: OvalParallel): number => ovalGirth(oval) + 2 * Math.PI * out;

/** The direction of the oval's outward normal at a parameter angle, radians, without jumps: a quarter turn at a quarter turn. */
export const normalAngle = ({ halfLength: a, halfBreadth: b }: Oval, angle: number): number => {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return angle + Math.atan2((b - a) * s * c, a * c * c + b * s * s);
};

const BACK = -Math.PI / 2;
const ROUNDS = 30;
/** mm. */
const REACHED = 1e-9;

/**
 * The oval's parameter angle that faces the point of the parallel at a part of its girth from the centre back, counter-
 * clockwise. Quarters come out exactly. Newton's rule on the arc length, which is that of the oval and out · the normal's turn.
 */
export const parallelAngle = (parallel: OvalParallel, part: number): number => {
  const guess = BACK + 2 * Math.PI * part;
  if (Number.isInteger(part * 4)) return guess;
  const { oval, out } = parallel;
  const { halfLength: a, halfBreadth: b } = oval;
  const target = part * parallelGirth(parallel);
  let angle = guess;
  for (let round = 0; round < ROUNDS; round++) {
    const miss = ovalArc(oval, BACK, angle) + out * (normalAngle(oval, angle) - BACK) - target;
    if (Math.abs(miss) < REACHED) break;
    const speed = norm(point(b * Math.sin(angle), a * Math.cos(angle)));
    angle -= miss / (speed + (out * a * b) / (speed * speed));
  }
  return angle;
};
