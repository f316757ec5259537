import { boundsOf } from './bounds.ts';
import { type Box, boxesMeet, boxGrown } from './box.ts';
import type { Meeting } from './cubic-crossings.ts';
import { cubicLength } from './cubic-length.ts';
import { curveAt } from './curve.ts';
import { curveCrossings } from './curve-crossings.ts';
import { curveLength } from './measure.ts';
import { type Cubic, type Curve, isClosed, type Path } from './path.ts';
import { cross, distance, dot, type Point } from './point.ts';
import { SAME_POINT } from './tolerance.ts';

/** A place where two paths cross or touch, with the distance along each, mm. */
export interface Crossing {
  readonly point: Point;
  readonly onA: number;
  readonly onB: number;
}

/** Where a joint of two neighbours, seen as a crossing, can lie off the joint itself: they touch there, and may long. */
const JOINT = 1e-3;

/**
 * Where two paths cross or touch, in the order of the first. Points are right to SAME_POINT, touches to its root.
 * Where they run along each other for a stretch, the ends of it.
 */
export const crossings = (a: Path, b: Path): Crossing[] => {
  const [curvesA, curvesB] = [fenced(a), fenced(b)];
  const found = curvesA.flatMap((p) =>
    curvesB
      .filter((q) => boxesMeet(p.box, q.box))
      .flatMap((q) => curveCrossings(p.curve, q.curve).map((m) => crossingOf(p, q, m))),
  );
  return once(found);
};

/**
 * Where a path crosses or touches itself. The joints of neighbours, and of the ends of a closed path, do not count.
 * onA is the smaller distance.
 */
export const selfCrossings = (path: Path): Crossing[] => {
  const curves = fenced(path);
  const closed = isClosed(path);
  const length = curves.reduce((sum, c) => sum + c.length, 0);
  const found = curves.flatMap((p, i) => [
    ...(p.curve.kind === 'cubic' ? loopOf(p.curve).map((m) => crossingOf(p, p, m)) : []),
    ...curves
      .slice(i + 1)
      .filter((q) => boxesMeet(p.box, q.box))
      .flatMap((q) => curveCrossings(p.curve, q.curve).map((m) => crossingOf(p, q, m))),
  ]);
  const isJoint = ({ onA, onB }: Crossing): boolean =>
    onB - onA <= JOINT || (closed && onA + length - onB <= JOINT);
  return once(found.filter((c) => !isJoint(c)));
};

interface Fenced {
  readonly curve: Curve;
  readonly box: Box;
  /** Distance along the path to the curve's start, and the curve's own length, mm. */
  readonly start: number;
  readonly length: number;
}

const fenced = (path: Path): Fenced[] => {
  let start = 0;
  return path.map((curve) => {
    const length = curveLength(curve);
    const entry = { curve, box: boxGrown(boundsOf([curve]), SAME_POINT), start, length };
    start += length;
    return entry;
  });
};

const crossingOf = (p: Fenced, q: Fenced, { t, u }: Meeting): Crossing => ({
  point: curveAt(p.curve, t),
  onA: p.start + lengthTo(p, t),
  onB: q.start + lengthTo(q, u),
});

const lengthTo = ({ curve, length }: Fenced, t: number): number =>
  curve.kind === 'cubic' && t > 0 && t < 1 ? cubicLength(curve, 0, t) : length * t;

/** In order along the first path, each place once: a crossing at a joint is found on both of its curves. */
const once = (found: readonly Crossing[]): Crossing[] =>
  [...found]
    .sort((p, q) => p.onA - q.onA || p.onB - q.onB)
    .filter((c, i, all) => !all.slice(Math.max(0, i - 3), i).some((d) => isSame(c, d)));

const isSame = (c: Crossing, d: Crossing): boolean =>
  distance(c.point, d.point) <= 2 * SAME_POINT &&
  Math.abs(c.onA - d.onA) <= JOINT &&
  Math.abs(c.onB - d.onB) <= JOINT;

/** The place where a single cubic crosses itself, if it does. */
const loopOf = ({ from, c1, c2, to }: Cubic): Meeting[] => {
  // Two parameters of one point differ, and (B(t) - B(u)) / (t - u) = a (t² + tu + u²) + b (t + u) + c is nought.
  const a = { x: to.x - from.x + 3 * (c1.x - c2.x), y: to.y - from.y + 3 * (c1.y - c2.y) };
  const b = { x: 3 * (from.x - 2 * c1.x + c2.x), y: 3 * (from.y - 2 * c1.y + c2.y) };
  const c = { x: 3 * (c1.x - from.x), y: 3 * (c1.y - from.y) };
  const sum = -cross(c, a) / cross(b, a);
  const product = sum * sum + dot({ x: b.x * sum + c.x, y: b.y * sum + c.y }, a) / dot(a, a);
  const half = Math.sqrt(sum * sum - 4 * product) / 2;
  const [t, u] = [sum / 2 - half, sum / 2 + half];
  return t >= 0 && u <= 1 && t < u ? [{ t, u }] : [];
};
