import { cubicCrossings, type Meeting } from './cubic-crossings.ts';
import { curveAt } from './curve.ts';
import { onArc, onLine } from './on-curve.ts';
import { type Arc, type Cubic, type Curve, type Line, radius } from './path.ts';
import { add, cross, distance, dot, left, norm, type Point, scale, subtract, unit } from './point.ts';
import { bernsteinRoots } from './roots.ts';
import { SAME_POINT } from './tolerance.ts';

/**
 * Where two curves cross or touch. Of curves that run along each other for a stretch, the stretch's ends.
 * Lines and arcs in closed form; with a cubic, roots of a polynomial (degree 3 with a line, 6 with an arc); two cubics
 * by halving and Newton's method. In no order.
 */
export const curveCrossings = (a: Curve, b: Curve): Meeting[] => {
  if (a.kind === 'cubic') {
    if (b.kind === 'cubic') return cubicCrossings(a, b);
    return cubicWith(a, b);
  }
  if (b.kind === 'cubic') return swapped(cubicWith(b, a));
  if (a.kind === 'line') return b.kind === 'line' ? lineWithLine(a, b) : onBoth(lineOnCircle(a, b), a, b);
  return b.kind === 'line' ? onBoth(lineOnCircle(b, a), a, b) : arcWithArc(a, b);
};

const swapped = (meetings: readonly Meeting[]): Meeting[] => meetings.map(({ t, u }) => ({ t: u, u: t }));

/** The meetings at those of the points that lie on both. */
const onBoth = (points: readonly Point[], a: Line | Arc, b: Line | Arc): Meeting[] =>
  points.flatMap((p) => {
    const t = parameterOn(a, p);
    const u = t === undefined ? undefined : parameterOn(b, p);
    return t === undefined || u === undefined ? [] : [{ t, u }];
  });

const parameterOn = (curve: Line | Arc, p: Point): number | undefined =>
  curve.kind === 'line' ? onLine(curve, p) : onArc(curve, p);

/** The ends of either curve that lie on the other: all there is to say of two that run along each other. */
const sharedEnds = (a: Line | Arc, b: Line | Arc): Meeting[] => {
  const meetings = onBoth([a.from, a.to, b.from, b.to], a, b);
  const apart = (m: Meeting, n: Meeting) => distance(curveAt(a, m.t), curveAt(a, n.t)) > SAME_POINT;
  return meetings.filter((m, i) => meetings.slice(0, i).every((n) => apart(m, n)));
};

const lineWithLine = (a: Line, b: Line): Meeting[] => {
  const [along, other] = [subtract(a.to, a.from), subtract(b.to, b.from)];
  const gap = subtract(b.from, a.from);
  const turn = cross(along, other);
  // Parallel, so that neither leaves the other's line by a point over its length?
  if (!(Math.abs(turn) > SAME_POINT * Math.max(norm(along), norm(other)))) {
    return Math.abs(cross(along, gap)) <= SAME_POINT * norm(along) ? sharedEnds(a, b) : [];
  }
  return onBoth([add(a.from, scale(along, cross(gap, other) / turn))], a, b);
};

/** Where the line, drawn on, meets the arc's whole circle. */
const lineOnCircle = (l: Line, a: Arc): Point[] => {
  const along = unit(subtract(l.to, l.from));
  const foot = add(l.from, scale(along, dot(subtract(a.centre, l.from), along)));
  const r = radius(a);
  const d = distance(foot, a.centre);
  if (Math.abs(d - r) <= SAME_POINT) return [foot];
  if (!(d < r)) return [];
  const half = Math.sqrt((r - d) * (r + d));
  return [add(foot, scale(along, -half)), add(foot, scale(along, half))];
};

const arcWithArc = (a: Arc, b: Arc): Meeting[] => {
  const [ra, rb] = [radius(a), radius(b)];
  const between = subtract(b.centre, a.centre);
  const d = norm(between);
  // One centre? Then one circle, or two that never meet.
  if (!(d > SAME_POINT)) return Math.abs(ra - rb) <= SAME_POINT ? sharedEnds(a, b) : [];
  const along = scale(between, 1 / d);
  const reach = (d + ((ra - rb) * (ra + rb)) / d) / 2;
  const foot = add(a.centre, scale(along, reach));
  if (Math.abs(d - ra - rb) <= SAME_POINT || Math.abs(d - Math.abs(ra - rb)) <= SAME_POINT)
    return onBoth([foot], a, b);
  const square = (ra - reach) * (ra + reach);
  if (!(square > 0)) return [];
  const aside = scale(left(along), Math.sqrt(square));
  return onBoth([add(foot, aside), subtract(foot, aside)], a, b);
};

const cubicWith = (c: Cubic, other: Line | Arc): Meeting[] => {
  const distances = other.kind === 'line' ? fromLine(c, other) : fromCircle(c, other);
  return bernsteinRoots(distances, SAME_POINT).flatMap((t) => {
    const u = parameterOn(other, curveAt(c, t));
    return u === undefined ? [] : [{ t, u }];
  });
};

/** Bernstein coefficients of the cubic's distance from the line, mm, + on its left. */
const fromLine = ({ from, c1, c2, to }: Cubic, l: Line): number[] => {
  const aside = left(unit(subtract(l.to, l.from)));
  return [from, c1, c2, to].map((p) => dot(subtract(p, l.from), aside));
};

/** Bernstein coefficients of (|cubic - centre|² - r²) / 2r: near the circle, the distance from it, mm. */
const fromCircle = ({ from, c1, c2, to }: Cubic, a: Arc): number[] => {
  const r = radius(a);
  const [p0, p1, p2, p3] = [from, c1, c2, to].map((p) => subtract(p, a.centre)) as [
    Point,
    Point,
    Point,
    Point,
  ];
  const squares = [
    dot(p0, p0),
    dot(p0, p1),
    (2 * dot(p0, p2) + 3 * dot(p1, p1)) / 5,
    (dot(p0, p3) + 9 * dot(p1, p2)) / 10,
    (2 * dot(p1, p3) + 3 * dot(p2, p2)) / 5,
    dot(p2, p3),
    dot(p3, p3),
  ];
  return squares.map((square) => (square - r * r) / (2 * r));
};
