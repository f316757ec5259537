import { arc, cubic, type Path } from './path.ts';
import { norm, ORIGIN, type Point, point, unit } from './point.ts';

/**
 * An ellipse centred on the origin, longer from front (+y) to back (−y) than it is broad.
 * Half lengths in mm; equal halves make it a circle.
 */
export interface Oval {
  readonly halfLength: number;
  readonly halfBreadth: number;
}

/**
 * The girth of an oval, mm, exact to rounding: the arithmetic-geometric mean of its halves
 * (Abramowitz and Stegun, Handbook of Mathematical Functions, 17.6).
 */
export const ovalGirth = ({ halfLength, halfBreadth }: Oval): number => {
  let [a, g] = [halfLength, halfBreadth];
  let [sum, weight] = [halfLength * halfLength + halfBreadth * halfBreadth, 0.5];
  sum /= 2;
  while (Math.abs(a - g) > 1e-9 * a) {
    const c = (a - g) / 2;
    weight *= 2;
    sum -= weight * c * c;
    [a, g] = [(a + g) / 2, Math.sqrt(a * g)];
  }
  return ((2 * Math.PI) / ((a + g) / 2)) * sum;
};

/** The oval of a girth (mm) and a breadth/length ratio in (0, 1]. */
export const ovalOfGirth = (girth: number, ratio: number): Oval => {
  const halfLength = girth / ovalGirth({ halfLength: 1, halfBreadth: ratio });
  return { halfLength, halfBreadth: halfLength * ratio };
};

export const isRound = ({ halfLength, halfBreadth }: Oval): boolean =>
  Math.abs(halfLength - halfBreadth) <= 1e-9 * halfLength;

/** Where the oval is at a parameter angle: 0 at the side +x, a quarter turn at the front, counter-clockwise. */
export const ovalPoint = ({ halfLength, halfBreadth }: Oval, angle: number): Point =>
  point(halfBreadth * Math.cos(angle), halfLength * Math.sin(angle));

/** The unit normal pointing out of the oval. */
export const ovalNormal = ({ halfLength, halfBreadth }: Oval, angle: number): Point => {
  const x = halfLength * Math.cos(angle);
  const y = halfBreadth * Math.sin(angle);
  return unit(point(x, y));
};

const speed = ({ halfLength, halfBreadth }: Oval, angle: number): number =>
  norm(point(halfBreadth * Math.sin(angle), halfLength * Math.cos(angle)));

/** The five-point Gauss-Legendre rule on (-1, 1): the weight of the middle, and two pairs of nodes with theirs. */
const GAUSS_MIDDLE = 128 / 225;
const GAUSS = [
  { node: Math.sqrt(5 - 2 * Math.sqrt(10 / 7)) / 3, weight: (322 + 13 * Math.sqrt(70)) / 900 },
  { node: Math.sqrt(5 + 2 * Math.sqrt(10 / 7)) / 3, weight: (322 - 13 * Math.sqrt(70)) / 900 },
];

const shortArc = (oval: Oval, from: number, to: number): number => {
  const half = (to - from) / 2;
  const middle = (to + from) / 2;
  let sum = GAUSS_MIDDLE * speed(oval, middle);
  for (const { node, weight } of GAUSS) {
    sum += weight * (speed(oval, middle - node * half) + speed(oval, middle + node * half));
  }
  return sum * half;
};

/** Length of the oval between two parameter angles, mm, signed; error under 1e-9 of the girth. */
export const ovalArc = (oval: Oval, from: number, to: number): number => {
  const pieces = Math.max(1, Math.ceil(Math.abs(to - from) / 0.2));
  const step = (to - from) / pieces;
  let sum = 0;
  for (let i = 0; i < pieces; i++) sum += shortArc(oval, from + i * step, from + (i + 1) * step);
  return sum;
};

/**
 * The parameter angles of points at given distances (mm, ascending, from the centre front towards +x).
 * Each is found from the one before, so a row of them is cheap.
 */
export const anglesFromFront = (oval: Oval, distances: readonly number[]): readonly number[] => {
  let angle = Math.PI / 2;
  let reached = 0;
  return distances.map((target) => {
    for (let i = 0; i < 20 && Math.abs(target - reached) > 1e-10; i++) {
      const next = angle - (target - reached) / speed(oval, angle);
      reached += ovalArc(oval, next, angle);
      angle = next;
    }
    return angle;
  });
};

/** Pieces of the drawn oval a full turn is made of: each an affine image of a 45° arc, 4e-6 of the radius off at most. */
const OVAL_PIECES = 8;

/** The closed outline of the oval, counter-clockwise from a parameter angle: a true circle where it is round. */
export const ovalPath = (oval: Oval, from: number): Path => {
  if (isRound(oval)) return [arc(ORIGIN, ovalPoint(oval, from), 2 * Math.PI)];
  const step = (2 * Math.PI) / OVAL_PIECES;
  const handle = (4 / 3) * Math.tan(step / 4);
  const velocity = (t: number): Point =>
    point(-oval.halfBreadth * Math.sin(t) * handle, oval.halfLength * Math.cos(t) * handle);
  const corners = Array.from({ length: OVAL_PIECES }, (_, i) => ovalPoint(oval, from + i * step));
  return corners.map((p, i) => {
    const q = corners[(i + 1) % OVAL_PIECES]!;
    const v = velocity(from + i * step);
    const w = velocity(from + (i + 1) * step);
    return cubic(p, point(p.x + v.x, p.y + v.y), point(q.x - w.x, q.y - w.y), q);
  });
};
