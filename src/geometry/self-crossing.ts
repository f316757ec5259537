import { type Box, boxesMeet, boxGrown, boxOf } from './box.ts';
import { curveAt, directionAt } from './curve.ts';
import { curveCrossings } from './curve-crossings.ts';
import { type Curve, type Path, radius } from './path.ts';
import { cross, distance, dot, type Point, point, subtract, unit } from './point.ts';

/** Where neighbours that touch at their joint may seem to cross beside it, mm. */
const JOINT = 1e-3;

/** A curve with a box around it and a cone that holds all its directions: the middle one, and radians to either side. */
interface Watched {
  readonly curve: Curve;
  readonly box: Box;
  readonly middle: Point;
  readonly spread: number;
}

/**
 * Whether a closed chain of curves crosses or touches itself anywhere but at its joints. Quick where it does not: most
 * pairs lie apart, and neighbours that never turn back on each other cannot meet again.
 */
export const crossesItself = (loop: Path): boolean => {
  const watched = loop.map(watch);
  const n = watched.length;
  return watched.some((a, i) => {
    for (let j = i + 1; j < n; j++) {
      const b = watched[j]!;
      if (!boxesMeet(a.box, b.box)) continue;
      const isNext = j === i + 1;
      const isPrevious = i === 0 && j === n - 1;
      if ((isNext || isPrevious) && !(isNext && isPrevious) && runsOn(a, b)) continue;
      const meetings = curveCrossings(a.curve, b.curve);
      const isJoint = ({ t, u }: { t: number; u: number }): boolean => {
        const [p, q] = [curveAt(a.curve, t), curveAt(b.curve, u)];
        const near = (end: Point, start: Point) => distance(p, end) <= JOINT && distance(q, start) <= JOINT;
        return (isNext && near(a.curve.to, b.curve.from)) || (isPrevious && near(a.curve.from, b.curve.to));
      };
      if (!meetings.every(isJoint)) return true;
    }
    return false;
  });
};

/** Whether all directions of both lie within a half turn: then both run one way, and meet only at their joint. */
const runsOn = (a: Watched, b: Watched): boolean =>
  Math.abs(angle(a.middle, b.middle)) + a.spread + b.spread < Math.PI;

const angle = (p: Point, q: Point): number => Math.atan2(cross(p, q), dot(p, q));

const watch = (curve: Curve): Watched => {
  const { from, to } = curve;
  if (curve.kind === 'line')
    return { curve, box: boxOf([from, to]), middle: directionAt(curve, 0), spread: 0 };
  if (curve.kind === 'arc') {
    const spread = Math.abs(curve.sweep) / 2;
    return { curve, box: arcBox(curve, radius(curve)), middle: directionAt(curve, 0.5), spread };
  }
  const { c1, c2 } = curve;
  const middle = unit(subtract(to, from));
  const legs = [subtract(c1, from), subtract(c2, c1), subtract(to, c2)];
  const spread = Math.max(...legs.map((leg) => Math.abs(angle(middle, leg))));
  return { curve, box: boxOf([from, to, c1, c2]), middle, spread };
};

/** A box that holds an arc: around its chord, grown by its bow, or around its circle. */
const arcBox = ({ from, to, centre, sweep }: Curve & { kind: 'arc' }, r: number): Box => {
  const half = Math.abs(sweep) / 2;
  if (half > Math.PI / 2) {
    return { min: point(centre.x - r, centre.y - r), max: point(centre.x + r, centre.y + r) };
  }
  const bow = r * (1 - Math.cos(half));
  return boxGrown(boxOf([from, to]), bow);
};
