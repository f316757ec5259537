import { arcBetween } from './curve.ts';
import { type Curve, type Line, line } from './path.ts';
import { add, cross, distance, dot, left, norm, type Point, scale, subtract, unit } from './point.ts';
import { OFFSET, SAME_POINT } from './tolerance.ts';

/**
 * The shape of a cut line where two edges' parallels leave a gap. Mitred: both run on to where they meet. Squared: the
 * allowance of the edge before the corner ends square to its stitch line, level with the next cut line, so that two
 * pieces sewn along it lie flush; squaredNext: the same for the edge after. Round: about the corner.
 */
export type CornerShape = 'mitred' | 'squared' | 'squaredNext' | 'round';

/** A corner of the stitch line: unit directions before and after it, and the widths of the edges there, mm. */
export interface Corner {
  readonly at: Point;
  readonly before: Point;
  readonly after: Point;
  readonly widthBefore: number;
  readonly widthAfter: number;
  readonly shape: CornerShape;
}

/**
 * What leads from the parallel before a corner to the one after it. Curves that fill a gap; or a cut of both where they
 * cross; or curves, and a cut of the first where it crosses `start`, or of the second where it crosses `end`.
 */
export type Joining =
  | { readonly kind: 'fill'; readonly curves: readonly Curve[] }
  | { readonly kind: 'cross' }
  | { readonly kind: 'cutBefore'; readonly start: Line; readonly rest: readonly Curve[] }
  | { readonly kind: 'cutAfter'; readonly first: readonly Curve[]; readonly end: Line };

/** A corner runs out at most this many widths from the stitch line's corner; a longer point is cut off square there. */
const LONGEST_MITRE = 2;

/** The ends of the two parallels, and how the outline turns between them. */
interface Ends extends Corner {
  readonly from: Point;
  readonly to: Point;
  readonly sine: number;
  readonly cosine: number;
  readonly width: number;
}

export const joiningOf = (corner: Corner): Joining => {
  const { at, before, after, widthBefore, widthAfter, shape } = corner;
  const ends: Ends = {
    at,
    before,
    after,
    widthBefore,
    widthAfter,
    shape,
    from: add(at, scale(left(before), -widthBefore)),
    to: add(at, scale(left(after), -widthAfter)),
    sine: cross(before, after),
    cosine: dot(before, after),
    width: Math.max(Math.abs(widthBefore), Math.abs(widthAfter)),
  };
  if (distance(ends.from, ends.to) <= SAME_POINT) return { kind: 'fill', curves: [] };
  if (!(widthBefore * widthAfter > 0)) return meeting(ends);
  // Is one width so much the larger that its end stands clear of the other's band? Then the cut line steps out to it,
  // so that no edge has less than its own width.
  if (Math.abs(widthAfter) * ends.cosine > Math.abs(widthBefore)) return stepAfter(ends);
  if (Math.abs(widthBefore) * ends.cosine > Math.abs(widthAfter)) return stepBefore(ends);
  if (widthBefore * ends.sine < 0) return { kind: 'cross' };
  if (shape === 'round') return round(ends);
  if (shape === 'mitred') return mitred(ends);
  return squared(ends);
};

/** Straight lines through points, without those of no length. */
const chain = (...points: readonly Point[]): Curve[] => {
  const lines: Curve[] = [];
  for (let i = 1; i < points.length; i++) {
    const [from, to] = [points[i - 1]!, points[i]!];
    if (distance(from, to) > SAME_POINT) lines.push(line(from, to));
  }
  return lines;
};

const fill = (...points: readonly Point[]): Joining => ({ kind: 'fill', curves: chain(...points) });

/** A wider edge follows: the parallel before it runs to the normal at the corner, then the line steps out along that. */
const stepAfter = ({ at, before, from, to, widthBefore, sine, cosine }: Ends): Joining => {
  const on = (widthBefore * sine) / cosine;
  if (on < -SAME_POINT) return { kind: 'cutBefore', start: line(at, to), rest: [] };
  return fill(from, add(from, scale(before, Math.max(on, 0))), to);
};

/** A wider edge came before: the same, seen from the other side. */
const stepBefore = ({ at, after, from, to, widthAfter, sine, cosine }: Ends): Joining => {
  const on = (widthAfter * sine) / cosine;
  if (on < -SAME_POINT) return { kind: 'cutAfter', first: [], end: line(from, at) };
  return fill(from, add(to, scale(after, -Math.max(on, 0))), to);
};

/** How far the parallel before must run on (+) or stop short (−), and from where the one after must start (− earlier). */
const mitre = ({ widthBefore, widthAfter, sine, cosine }: Ends): [on: number, since: number] => [
  (widthAfter - widthBefore * cosine) / sine,
  (widthAfter * cosine - widthBefore) / sine,
];

/** A fold, or an allowance outside that turns into one inside: where the two lines cross, whichever must be cut. */
const meeting = (ends: Ends): Joining => {
  const { at, before, after, from, to, width, widthBefore, widthAfter } = ends;
  const [on, since] = mitre(ends);
  const extends_ = on >= -SAME_POINT && since <= SAME_POINT;
  if (extends_) return mitred(ends);
  const tip = add(from, scale(before, on));
  if (!(distance(tip, at) <= LONGEST_MITRE * width)) {
    return widthBefore === 0 || widthAfter === 0 ? fill(from, to) : fill(from, at, to);
  }
  if (on < 0 && since > 0) return { kind: 'cross' };
  const reach = 2 * distance(tip, on < 0 ? to : from) + width;
  return on < 0
    ? { kind: 'cutBefore', start: line(subtract(to, scale(after, reach)), to), rest: [] }
    : { kind: 'cutAfter', first: [], end: line(from, add(from, scale(before, reach))) };
};

const mitred = (ends: Ends): Joining => {
  const { at, before, after, from, to, width } = ends;
  const [on] = mitre(ends);
  const tip = add(from, scale(before, on));
  // So flat that the tip is nothing: straight across.
  if (distance(tip, scale(add(from, to), 0.5)) <= OFFSET / 4) return fill(from, to);
  if (distance(tip, at) <= LONGEST_MITRE * width) return fill(from, tip, to);
  // Straight back, with no tip at all? Then it points along the edge.
  const away = Number.isFinite(on) ? unit(subtract(tip, at)) : before;
  const longest = LONGEST_MITRE * width;
  const runOn = (end: Point, along: Point): Point =>
    add(end, scale(along, Math.max(0, (longest - dot(subtract(end, at), away)) / dot(along, away))));
  return fill(from, runOn(from, before), runOn(to, scale(after, -1)), to);
};

const round = ({
  at,
  before,
  after,
  from,
  to,
  width,
  widthBefore,
  widthAfter,
  sine,
  cosine,
}: Ends): Joining => {
  const out = width * Math.sign(widthBefore);
  const [start, end] = [add(at, scale(left(before), -out)), add(at, scale(left(after), -out))];
  const turn = Math.atan2(sine, cosine);
  const around = arcBetween(at, start, end, turn);
  // The narrower side steps out to the rounding first.
  const [first, last] = [
    widthBefore === out ? [] : chain(from, start),
    widthAfter === out ? [] : chain(end, to),
  ];
  return { kind: 'fill', curves: [...first, around, ...last] };
};

const squared = (ends: Ends): Joining => {
  const { at, before, after, from, to, sine, cosine, width, widthBefore, widthAfter, shape } = ends;
  const isNext = shape === 'squaredNext';
  const along = isNext ? scale(after, -1) : before;
  const on = (isNext ? widthBefore : widthAfter) / sine;
  const tip = add(isNext ? to : from, scale(along, on));
  // Would it run out too far? A mitre does not.
  if (!(norm(subtract(tip, at)) <= LONGEST_MITRE * width)) return mitred(ends);
  const foot = add(at, scale(along, on));
  // In a blunt corner the foot stands on the other cut line itself, past its end; there that line is cut.
  const past = add(foot, subtract(foot, tip));
  const isBlunt = cosine > 0 && norm(subtract(foot, isNext ? from : to)) > SAME_POINT;
  if (!isBlunt) return isNext ? fill(from, foot, tip, to) : fill(from, tip, foot, to);
  return isNext
    ? { kind: 'cutBefore', start: line(past, tip), rest: chain(tip, to) }
    : { kind: 'cutAfter', first: chain(from, tip), end: line(tip, past) };
};
