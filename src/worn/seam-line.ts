import { flatten } from '../geometry/flatten.ts';
import { pathLength, pointAt } from '../geometry/measure.ts';
import { distance, type Point } from '../geometry/point.ts';
import { between3, type Point3 } from '../geometry/space.ts';
import type { Piece } from '../pattern/piece.ts';
import type { EdgeUse } from '../pattern/seam.ts';
import { edgeKnots, knotAt, type Sheet } from './sheet.ts';

/** A side of a seam as it stands in space, and how far it is from what it should lie on when flat, mm. */
export interface SeamLine {
  readonly points: readonly Point3[];
  readonly astray: number;
}

/** Steps along an edge at which it is looked up on its net, or on several side by side, mm. */
const [STEP, STEP_ACROSS] = [4, 1];

/**
 * A chain of edges on the nets of a cap, from its start to its end, knot by knot; null where the nets do not have them all,
 * as of a lining.
 */
export const seamLine = (
  sheets: readonly Sheet[],
  pieces: readonly Piece[],
  chain: readonly EdgeUse[],
): SeamLine | null => {
  const points: Point3[] = [];
  let astray = 0;
  for (const use of chain) {
    const own = sheets.filter(({ piece, copy }) => piece === use.piece && copy === use.copy);
    const outline = pieces.find(({ id }) => id === use.piece)?.outline;
    const path = outline?.find(({ name }) => name === use.edge)?.path;
    if (own.length === 0 || !outline || !path) return null;
    const whole = pathLength(path);
    const [from, to] = [use.from ?? 0, use.to ?? whole];
    // Of several nets that lie side by side, the rails between them are no edges of the piece.
    const ring = own.length > 1 ? outline.flatMap((edge) => flatten(edge.path, CHORDS)) : null;
    const rounds = own.map((sheet) => roundOf(sheet, ring));
    const count = Math.max(2, Math.ceil((to - from) / (own.length > 1 ? STEP_ACROSS : STEP)));
    const places = Array.from({ length: count + 1 }, (_, i) => {
      const along = from + ((to - from) * i) / count;
      return placeOn(rounds, pointAt(path, use.backwards ? whole - along : along));
    });
    astray = Math.max(astray, ...places.map(({ off }) => off));
    points.push(...walked(places));
  }
  return { points, astray };
};

/** The edge of a net, and its corners on the flat piece. */
interface Round {
  readonly sheet: Sheet;
  readonly knots: readonly number[];
  readonly flat: readonly Point[];
  readonly corners: readonly number[];
  /** Whether the step from each knot to the next is on the outline. */
  readonly outer: readonly boolean[];
}

/** An outline this near (mm) to its chords; and steps whose middle is within the other of it lie on it. */
const [CHORDS, ON_OUTLINE] = [0.02, 0.1];

const roundOf = (sheet: Sheet, ring: readonly Point[] | null): Round => {
  const knots = edgeKnots(sheet);
  const [across, top] = [sheet.columns - 1, (sheet.rows - 1) * sheet.columns];
  const corners = [0, across, top + across, top].map((k) => knots.indexOf(k));
  const flat = knots.map((k) => ({ x: sheet.flat[2 * k]!, y: sheet.flat[2 * k + 1]! }));
  return {
    sheet,
    knots,
    flat,
    outer: ring === null ? flat.map(() => true) : outerSteps(flat, corners, ring),
    corners,
  };
};

/** Whether each step is on the outline: the whole of a ruling or rail is, or else it lies within the piece, though it may touch. */
const outerSteps = (
  flat: readonly Point[],
  corners: readonly number[],
  ring: readonly Point[],
): readonly boolean[] =>
  corners.flatMap((from, side) => {
    const to = corners[side + 1] ?? flat.length;
    const near = Array.from({ length: Math.max(0, to - from) }, (_, i) => {
      const [p, q] = [flat[from + i]!, flat[(from + i + 1) % flat.length]!];
      return toChain(ring, { x: (p.x + q.x) / 2, y: (p.y + q.y) / 2 }) < ON_OUTLINE;
    });
    const isOuter = near.filter(Boolean).length > near.length / 2;
    return near.map(() => isOuter);
  });

const toChain = (chain: readonly Point[], p: Point): number => {
  let least = Infinity;
  for (let i = 1; i < chain.length; i++) least = Math.min(least, squareTo(chain[i - 1]!, chain[i]!, p));
  return Math.sqrt(least);
};

/** The share of a step at which it is nearest to a point. */
const shareNearest = (a: Point, b: Point, p: Point): number => {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const square = dx * dx + dy * dy;
  return square > 0 ? Math.min(1, Math.max(0, ((p.x - a.x) * dx + (p.y - a.y) * dy) / square)) : 0;
};

/** How far a point is from a step, squared. */
const squareTo = (a: Point, b: Point, p: Point): number => {
  const t = shareNearest(a, b, p);
  const [ex, ey] = [p.x - a.x - t * (b.x - a.x), p.y - a.y - t * (b.y - a.y)];
  return ex * ex + ey * ey;
};

/** A place on the edge of a net: so many knots round it, and how far (mm) from what was looked for. */
interface Place {
  readonly round: Round;
  readonly at: number;
  readonly off: number;
}

/** A corner of the outline is the corner of the net that is this near, mm. */
const CORNER = 0.2;

const placeOn = (rounds: readonly Round[], p: Point): Place => {
  let [round, step, least] = [rounds[0]!, 0, Infinity];
  for (const one of rounds) {
    const { flat, outer } = one;
    for (let i = 0; i < flat.length; i++) {
      if (!outer[i]) continue;
      const square = squareTo(flat[i]!, flat[i + 1 === flat.length ? 0 : i + 1]!, p);
      if (square < least) [round, step, least] = [one, i, square];
    }
  }
  const { flat } = round;
  const at = step + shareNearest(flat[step]!, flat[(step + 1) % flat.length]!, p);
  const best = { round, at, off: Math.sqrt(least) };
  const corner = best.round.corners.find((i) => distance(best.round.flat[i]!, p) < CORNER);
  return corner === undefined ? best : { ...best, at: corner };
};

/** From place to place by the knots between them; straight across where that would be a long way round. */
const walked = (places: readonly Place[]): readonly Point3[] => {
  const points = [spaceAt(places[0]!)];
  for (let i = 1; i < places.length; i++) {
    const [before, now] = [places[i - 1]!, places[i]!];
    points.push(...knotsBetween(before, now), spaceAt(now));
  }
  return points;
};

const spaceAt = ({ round: { sheet, knots }, at }: Place): Point3 => {
  const i = Math.floor(at);
  const [p, q] = [knots[i % knots.length]!, knots[(i + 1) % knots.length]!];
  return between3(knotAt(sheet, p), knotAt(sheet, q), at - i);
};

const MOST_BETWEEN = 40;

const knotsBetween = (from: Place, to: Place): readonly Point3[] => {
  if (from.round !== to.round) return [];
  const { knots, sheet } = from.round;
  const count = knots.length;
  const ahead = (to.at - from.at + count) % count;
  const forward = ahead <= count / 2;
  if (Math.min(ahead, count - ahead) > MOST_BETWEEN) return [];
  const passed: Point3[] = [];
  const first = forward ? Math.floor(from.at) + 1 : Math.ceil(from.at) - 1;
  const steps = forward ? ahead : count - ahead;
  for (let k = 0; k < count; k++) {
    const i = forward ? first + k : first - k;
    if (Math.abs(i - from.at) >= steps) break;
    passed.push(knotAt(sheet, knots[(i + count) % count]!));
  }
  return passed;
};
