import { boxesMeet, boxGrown, boxOf } from './box.ts';
import { accelerationAt, curveAt, curvePart, velocityAt } from './curve.ts';
import { onCubic } from './on-curve.ts';
import type { Cubic } from './path.ts';
import { cross, distance, dot, norm, type Point, subtract } from './point.ts';
import { SAME_POINT } from './tolerance.ts';

/** A point that two curves share: its parameter on the one and on the other. */
export interface Meeting {
  readonly t: number;
  readonly u: number;
}

/** A part of a cubic, with the parameters it runs between. */
interface Span {
  readonly c: Cubic;
  readonly from: number;
  readonly to: number;
}

/**
 * Curves that run almost alike are halved down to this length (mm). Parts so short differ in direction by the bend of a
 * hundredth of a millimetre: what crosses flatter than that is a touch to within SAME_POINT.
 */
const SHORT = 0.01;
/** So straight (radians to either side of its chord) that Newton's method from where the chords cross is safe. */
const STRAIGHT = 0.1;
/** No two cubics cross oftener than 9 times; more is a stretch they share. */
const MOST = 40;

/** Where two cubics cross or touch, each place once. Of two that share a stretch, its ends. */
export const cubicCrossings = (a: Cubic, b: Cubic): Meeting[] => {
  if (!boxesMeet(fence(a), fence(b))) return [];
  const ends = sharedEnds(a, b);
  if (ends.length > 1 && sharedBetween(a, b, ends)) return ends;
  const found = [...ends];
  search({ c: a, from: 0, to: 1 }, { c: b, from: 0, to: 1 }, [a, b], found);
  return found;
};

const fence = ({ from, c1, c2, to }: Cubic) => boxGrown(boxOf([from, c1, c2, to]), SAME_POINT);

const addOnce = (a: Cubic, found: Meeting[], m: Meeting): void => {
  const p = curveAt(a, m.t);
  const known = found.some(
    (n) => distance(curveAt(a, n.t), p) <= 10 * SAME_POINT && Math.abs(n.u - m.u) < 0.5,
  );
  if (!known) found.push(m);
};

/** The ends of either that lie on the other. */
const sharedEnds = (a: Cubic, b: Cubic): Meeting[] => {
  const found: Meeting[] = [];
  for (const t of [0, 1]) {
    const u = onCubic(b, curveAt(a, t));
    if (u !== undefined) addOnce(a, found, { t, u });
  }
  for (const u of [0, 1]) {
    const t = onCubic(a, curveAt(b, u));
    if (t !== undefined) addOnce(a, found, { t, u });
  }
  return found;
};

/** Whether the cubics are one between two shared points: ten common points make them so. */
const sharedBetween = (a: Cubic, b: Cubic, [p, q]: readonly Meeting[]): boolean =>
  [1, 2, 3, 4, 5, 6, 7, 8].every((i) => onCubic(b, curveAt(a, p!.t + ((q!.t - p!.t) * i) / 9)) !== undefined);

const search = (a: Span, b: Span, whole: readonly [Cubic, Cubic], found: Meeting[]): void => {
  if (found.length >= MOST || !boxesMeet(fence(a.c), fence(b.c))) return;
  if (apartAcross(a.c, b.c) || apartAcross(b.c, a.c)) return;
  const [bendA, bendB] = [bend(a.c), bend(b.c)];
  if (bendA <= STRAIGHT && bendB <= STRAIGHT && slant(a.c, b.c) > bendA + bendB) {
    // They run across each other, so they cross once at most. One that all but stands still at an end turns back beyond it,
    // and Newton's method may find that way: then the crossing is sought on their halves.
    const at = newton(a.c, b.c);
    if (at) {
      addOnce(whole[0], found, { t: along(a, at.t), u: along(b, at.u) });
      return;
    }
  }
  const [longA, longB] = [reach(a.c), reach(b.c)];
  if (longA <= SHORT && longB <= SHORT) {
    const crossed = newton(a.c, b.c);
    const at = crossed
      ? { t: along(a, crossed.t), u: along(b, crossed.u) }
      : touch(...whole, { t: along(a, 0.5), u: along(b, 0.5) });
    if (at) addOnce(whole[0], found, at);
    return;
  }
  const parts = (s: Span, long: number, other: number): Span[] => (long * 2 > other ? halves(s) : [s]);
  for (const p of parts(a, longA, longB)) for (const q of parts(b, longB, longA)) search(p, q, whole, found);
};

const along = ({ from, to }: Span, t: number): number => from + (to - from) * t;

const halves = ({ c, from, to }: Span): Span[] => {
  const middle = (from + to) / 2;
  return [
    { c: curvePart(c, 0, 0.5) as Cubic, from, to: middle },
    { c: curvePart(c, 0.5, 1) as Cubic, from: middle, to },
  ];
};

/** An upper bound on how far apart two points of the curve are. */
const reach = ({ from, c1, c2, to }: Cubic): number =>
  distance(from, c1) + distance(c1, c2) + distance(c2, to);

/** Whether b lies clear of a across a's chord: seen along the chord, both are thin. */
const apartAcross = (a: Cubic, b: Cubic): boolean => {
  const chord = subtract(a.to, a.from);
  const slack = SAME_POINT * norm(chord);
  const across = (p: Point): number => cross(chord, subtract(p, a.from));
  const [p, q] = [across(a.c1), across(a.c2)];
  const others = [b.from, b.c1, b.c2, b.to].map(across);
  return Math.min(...others) > Math.max(0, p, q) + slack || Math.max(...others) < Math.min(0, p, q) - slack;
};

/** The largest angle between the curve and its chord, at most; π where the chord says nothing. */
const bend = ({ from, c1, c2, to }: Cubic): number => {
  const chord = subtract(to, from);
  const legs = [subtract(c1, from), subtract(c2, c1), subtract(to, c2)];
  if (!(norm(chord) > 0)) return Math.PI;
  return Math.max(...legs.map((leg) => Math.abs(Math.atan2(cross(chord, leg), dot(chord, leg)))));
};

/** The angle between the two chords as lines, 0 to a right angle. */
const slant = (a: Cubic, b: Cubic): number => {
  const [p, q] = [subtract(a.to, a.from), subtract(b.to, b.from)];
  return Math.atan2(Math.abs(cross(p, q)), Math.abs(dot(p, q)));
};

/** The crossing of two cubics that are nearly straight, or nothing where it lies beyond an end. */
const newton = (a: Cubic, b: Cubic): Meeting | undefined => {
  let [t, u] = [0.5, 0.5];
  for (let i = 0; i < 20; i++) {
    const gap = subtract(curveAt(b, u), curveAt(a, t));
    const [va, vb] = [velocityAt(a, t), velocityAt(b, u)];
    const turn = cross(va, vb);
    const [dt, du] = [cross(gap, vb) / turn, cross(gap, va) / turn];
    t += dt;
    u += du;
    if (!(Math.abs(dt) + Math.abs(du) > 1e-14)) break;
    if (!(Math.abs(t) < 10 && Math.abs(u) < 10)) return undefined;
  }
  return inside(a, b, { t, u });
};

/** The place near a start where the two run alike with the least distance, or nothing where they do not touch there. */
const touch = (a: Cubic, b: Cubic, start: Meeting): Meeting | undefined => {
  let { t, u } = start;
  for (let i = 0; i < 20; i++) {
    const gap = subtract(curveAt(a, t), curveAt(b, u));
    const [va, vb] = [velocityAt(a, t), velocityAt(b, u)];
    const [aa, ab] = [accelerationAt(a, t), accelerationAt(b, u)];
    const [f, g] = [cross(va, vb), dot(gap, va)];
    const [ft, fu] = [cross(aa, vb), cross(va, ab)];
    const [gt, gu] = [dot(va, va) + dot(gap, aa), -dot(vb, va)];
    const whole = ft * gu - fu * gt;
    const [dt, du] = [(fu * g - f * gu) / whole, (f * gt - ft * g) / whole];
    t += dt;
    u += du;
    if (!(Math.abs(dt) + Math.abs(du) > 1e-12)) break;
  }
  // Has it run off to another place? Then this one is no touch.
  if (!(distance(curveAt(a, t), curveAt(a, start.t)) <= 2 * SHORT)) return undefined;
  return inside(a, b, { t, u });
};

/** A meeting clamped to the curves' ends, or nothing where they are apart there. */
const inside = (a: Cubic, b: Cubic, { t, u }: Meeting): Meeting | undefined => {
  const at = { t: Math.min(Math.max(t, 0), 1), u: Math.min(Math.max(u, 0), 1) };
  return distance(curveAt(a, at.t), curveAt(b, at.u)) <= SAME_POINT ? at : undefined;
};
