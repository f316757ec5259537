import { accelerationAt, arcBetween, curveAt, directionAt, velocityAt } from './curve.ts';
import { type Arc, type Cubic, type Curve, cubic, line, radius } from './path.ts';
import { add, between, cross, dot, left, norm, ORIGIN, type Point, scale, subtract } from './point.ts';
import { OFFSET, SAME_POINT } from './tolerance.ts';

/**
 * A piece of a parallel. Where the curve turns more tightly than the distance allows, its parallel runs backwards, and
 * the normals that lead to it pass through the centres of curvature: `past` are those at its start and its end.
 */
export interface ParallelPiece {
  readonly curve: Curve;
  readonly past?: readonly [Point, Point];
}

/** Halving a cubic stops here: its parallel has a bend that no tolerance can follow. */
const DEEPEST = 8;
/** A parallel that moves less than this for each mm of the curve is about to turn back, or has just done so. */
const TIGHT = 0.25;

/**
 * The curve at a distance to the right of another, mm, − to its left: to the outside of a counter-clockwise outline.
 * Exact for lines and arcs; a cubic gets as many cubics as stay within OFFSET. No corners, and no care for what the
 * parallel runs into. An arc that shrinks to its centre gives a line without length there.
 */
export const parallel = (curve: Curve, by: number): readonly ParallelPiece[] => {
  if (by === 0) return [{ curve }];
  if (curve.kind === 'line') {
    const aside = scale(directionAt(curve, 0), by);
    const out = { x: aside.y, y: -aside.x };
    return [{ curve: line(add(curve.from, out), add(curve.to, out)) }];
  }
  if (curve.kind === 'arc') return [arcParallel(curve, by)];
  const pieces: ParallelPiece[] = [];
  cubicParallel({ cubic: curve, by }, frameAt(curve, by, 0), frameAt(curve, by, 1), 0, pieces);
  return pieces;
};

const arcParallel = (a: Arc, by: number): ParallelPiece => {
  const r = radius(a);
  const share = (r + by * Math.sign(a.sweep)) / r;
  if (Math.abs(share) * r <= SAME_POINT) return { curve: line(a.centre, a.centre) };
  const [from, to] = [between(a.centre, a.from, share), between(a.centre, a.to, share)];
  const curve = arcBetween(a.centre, from, to, a.sweep);
  return share < 0 ? { curve, past: [a.centre, a.centre] } : { curve };
};

interface Task {
  readonly cubic: Cubic;
  readonly by: number;
}

/** A point of a cubic's parallel: its parameter, where it is, how fast it moves with the parameter. */
interface Frame {
  readonly t: number;
  readonly at: Point;
  readonly rate: Point;
  /** How far the parallel moves for each mm of the cubic: 1 + by × curvature, negative where it runs backwards. */
  readonly share: number;
}

const frameAt = (c: Cubic, by: number, t: number): Frame => {
  const along = directionAt(c, t);
  const at = add(curveAt(c, t), scale(left(along), -by));
  // Where the cubic stands still, its turning is taken from just inside.
  const v = velocityAt(c, t);
  const near = norm(v) > SAME_POINT ? t : t < 0.5 ? t + 1e-3 : t - 1e-3;
  const velocity = near === t ? v : velocityAt(c, near);
  const speed = norm(velocity);
  const share = 1 + (by * cross(velocity, accelerationAt(c, near))) / speed ** 3;
  return { t, at, rate: scale(velocity, share), share };
};

/** The centre of curvature: the normal reaches it at the distance -1 / curvature. */
const centreAt = ({ cubic: c, by }: Task, { t, at, share }: Frame): Point =>
  add(at, scale(left(directionAt(c, t)), by - by / (1 - share)));

const cubicParallel = (task: Task, a: Frame, b: Frame, depth: number, pieces: ParallelPiece[]): void => {
  const half = frameAt(task.cubic, task.by, (a.t + b.t) / 2);
  const turn = turnsBack(task, a, half) ?? turnsBack(task, half, b);
  // Does the parallel come to a point and turn back? Then that is where to part it.
  const inner = turn !== undefined && turn - a.t > 1e-9 && b.t - turn > 1e-9;
  if (inner && depth < 2 * DEEPEST) {
    const { at } = frameAt(task.cubic, task.by, turn);
    const cusp: Frame = { t: turn, at, rate: ORIGIN, share: 0 };
    cubicParallel(task, a, cusp, depth + 1, pieces);
    cubicParallel(task, cusp, b, depth + 1, pieces);
    return;
  }
  const third = (b.t - a.t) / 3;
  const curve = cubic(a.at, add(a.at, scale(a.rate, third)), subtract(b.at, scale(b.rate, third)), b.at);
  // Where the parallel nearly stands still its branches run close together, and must not be mistaken for each other.
  const isTight = Math.min(Math.abs(a.share), Math.abs(half.share), Math.abs(b.share)) < TIGHT;
  if (depth >= DEEPEST || isClose(task, curve, a.t, b.t, isTight ? OFFSET / 50 : OFFSET / 2)) {
    pieces.push(half.share < 0 ? { curve, past: [centreAt(task, a), centreAt(task, b)] } : { curve });
    return;
  }
  cubicParallel(task, a, half, depth + 1, pieces);
  cubicParallel(task, half, b, depth + 1, pieces);
};

/** The parameter between two frames where the parallel turns back, found by halving. */
const turnsBack = ({ cubic: c, by }: Task, a: Frame, b: Frame): number | undefined => {
  if (!(a.share * b.share < 0)) return undefined;
  let [low, high] = [a.t, b.t];
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2;
    if (frameAt(c, by, middle).share > 0 === a.share > 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
};

/** Whether a fitted cubic keeps to the parallel, asked at three places inside. */
const isClose = ({ cubic: c, by }: Task, fit: Cubic, from: number, to: number, within: number): boolean =>
  [0.25, 0.5, 0.75].every((u) => {
    const p = curveAt(fit, u);
    const t = from + (to - from) * u;
    // One step to the place on the cubic that p stands square to; then the distance is blind to how far along it is.
    const v = velocityAt(c, t);
    const gap = subtract(p, curveAt(c, t));
    const slope = dot(v, v) - dot(gap, accelerationAt(c, t));
    const step = dot(gap, v) / slope;
    const foot = Math.abs(step) < to - from ? Math.min(Math.max(t + step, 0), 1) : t;
    const miss = dot(subtract(p, curveAt(c, foot)), left(directionAt(c, foot))) + by;
    return Math.abs(miss) <= within;
  });
