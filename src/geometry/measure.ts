import { cubicLength, cubicParameter } from './cubic-length.ts';
import { curveAt, curvePart, directionAt, isShort, reversedCurve } from './curve.ts';
import { type Curve, line, type Path, radius } from './path.ts';
import { distance, type Point } from './point.ts';

/** Length, mm: exact for a line and an arc, to CUBIC_LENGTH for a cubic. */
export const curveLength = (curve: Curve): number => {
  if (curve.kind === 'line') return distance(curve.from, curve.to);
  if (curve.kind === 'arc') return radius(curve) * Math.abs(curve.sweep);
  return cubicLength(curve);
};

/** Length of the whole chain, mm. */
export const pathLength = (path: Path): number => {
  let sum = 0;
  for (const curve of path) sum += curveLength(curve);
  return sum;
};

/** The parameter at a distance along a curve of known length, mm, clamped to the ends. */
const parameterAt = (curve: Curve, mm: number, length = curveLength(curve)): number => {
  if (!(mm > 0)) return 0;
  if (!(mm < length)) return 1;
  return curve.kind === 'cubic' ? cubicParameter(curve, mm, length) : mm / length;
};

/** The curve that a distance along the path falls on, with its place in the chain and the parameter on it. */
interface Place {
  readonly index: number;
  readonly curve: Curve;
  readonly t: number;
}

/** At a joint, the start of the curve that begins there; curves without length are passed over. */
const placeAt = (path: Path, mm: number): Place => {
  if (path.length === 0) throw new RangeError('an empty path has no points');
  if (Number.isNaN(mm)) throw new RangeError('the distance along a path is not a number');
  let rest = Math.max(mm, 0);
  let last = 0;
  for (const [index, curve] of path.entries()) {
    const length = curveLength(curve);
    if (rest < length) return { index, curve, t: parameterAt(curve, rest, length) };
    rest -= length;
    if (!isShort(curve)) last = index;
  }
  return { index: last, curve: path[last]!, t: 1 };
};

/** The point at a distance along the path, mm, clamped to its ends. */
export const pointAt = (path: Path, mm: number): Point => {
  const { curve, t } = placeAt(path, mm);
  return curveAt(curve, t);
};

/**
 * The unit vector along the path at a distance, mm, clamped to its ends. At a corner, the direction that follows it.
 * A path without length has none: NaN.
 */
export const tangentAt = (path: Path, mm: number): Point => {
  const { curve, t } = placeAt(path, mm);
  return directionAt(curve, t);
};

/**
 * The part of a path between two distances, mm, clamped to its ends. Arcs stay arcs, cubics cubics. Walked backwards
 * where from > to; a line without length where they are equal.
 */
export const stretch = (path: Path, from: number, to: number): Path => {
  if (from > to) return reversed(stretch(path, to, from));
  const [a, b] = [placeAt(path, from), placeAt(path, to)];
  const part = path.slice(a.index, b.index + 1).flatMap((curve, i): Curve[] => {
    const [t0, t1] = [i === 0 ? a.t : 0, i === b.index - a.index ? b.t : 1];
    return t0 < t1 ? [curvePart(curve, t0, t1)] : [];
  });
  const at = curveAt(a.curve, a.t);
  return part.length > 0 ? part : [line(at, at)];
};

/** The same path walked from its end to its start. */
export const reversed = (path: Path): Path => path.map(reversedCurve).reverse();
