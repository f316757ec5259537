import { LAID_TOUCH } from '../geometry/tolerance.ts';
import { depthBetween, type Floor } from './floor.ts';
import { meetingOf } from './meetings.ts';

/** Where a place was found, mm. */
export interface Place {
  readonly stance: number;
  readonly room: number;
  readonly x: number;
  readonly y: number;
  /** How far the outline reaches there. */
  readonly end: number;
}

/** Edges walked at most for one stance: with very many pieces on the floor fewer levels are tried. */
const WALKED = 150_000;

/** A nudge (mm) below a level at which places begin to be denied. */
const BELOW = 1e-7;

/**
 * The place furthest left, then lowest, where a stance is free of all that lies on the floor, or null. Along lines
 * across the room it is exact; the lines go through the corners of the no-fit polygons. Looked for from the x `from`
 * on, and no further than the outline may reach, `limit`.
 */
export const leftmost = (
  f: Floor,
  stance: number,
  room: number,
  from: number,
  limit: number,
): Place | null => {
  const { span } = f.plan.stances[stance]!;
  const box = f.plan.rooms[room]!;
  const low = { x: Math.max(from, box.x0 - span.x0), y: box.y0 - span.y0 };
  const high = { x: Math.min(f.roomEnd[room]!, limit) - span.x1, y: box.y1 - span.y1 };
  if (!(high.x >= low.x - LAID_TOUCH && high.y >= low.y - LAID_TOUCH)) return null;
  const around = edgesAround(f, stance, room, low.x);
  let best: Place | null = null;
  let bound = Math.max(high.x, low.x);
  for (const y of levelsIn(around, Math.min(low.y, high.y), high.y)) {
    const x = firstFree(around, y, low.x, bound);
    if (x === null || (best !== null && x >= best.x - BELOW)) continue;
    if (!isFree(f, stance, x, y)) continue;
    best = { stance, room, x, y, end: x + span.x1 };
    bound = x;
  }
  return best;
};

/** The no-fit polygons about a stance: edges ax, ay, bx, by in the plane, the parts that share one by their starts. */
interface Around {
  readonly edges: Float64Array;
  readonly starts: readonly number[];
  readonly levels: readonly number[];
  readonly lows: readonly number[];
  readonly highs: readonly number[];
}

const edgesAround = (f: Floor, stance: number, room: number, from: number): Around => {
  const edges: number[] = [];
  const starts = [0];
  const levels: number[] = [];
  const [lows, highs]: [number[], number[]] = [[], []];
  const { reach } = f.plan.stances[stance]!;
  for (let j = 0; j < f.total; j++) {
    if (!(f.x0[j]! < f.roomEnd[room]! && f.x1[j]! > from + reach.x0)) continue;
    const { noFit, cosine, sine } = meetingOf(f.meetings, f.stance[j]!, stance);
    let [low, high] = [Infinity, -Infinity];
    for (const ring of noFit.rings) {
      const last = ring.length - 2;
      const xAt = (i: number) => f.x[j]! + cosine * ring[i]! + sine * ring[i + 1]!;
      const yAt = (i: number) => f.y[j]! + cosine * ring[i + 1]! - sine * ring[i]!;
      let [hy, ay] = [yAt(last), yAt(0)];
      for (let i = 0; i <= last; i += 2) {
        const next = i === last ? 0 : i + 2;
        const by = yAt(next);
        edges.push(xAt(i), ay, xAt(next), by);
        // Where the polygon begins, a place just below is free; else the corner's own level is tried.
        levels.push(hy >= ay && by >= ay ? ay - BELOW : ay);
        low = Math.min(low, ay);
        high = Math.max(high, ay);
        hy = ay;
        ay = by;
      }
    }
    starts.push(edges.length);
    lows.push(low);
    highs.push(high);
  }
  return { edges: Float64Array.from(edges), starts, levels, lows, highs };
};

/** The levels to try, from the lowest up, thinned out where there are too many. */
const levelsIn = (around: Around, low: number, high: number): readonly number[] => {
  const within = around.levels.filter((y) => y > low && y < high).sort((a, b) => a - b);
  const distinct = within.filter((y, i) => i === 0 || y - within[i - 1]! > BELOW / 2);
  const most = Math.max(24, Math.floor(WALKED / (1 + around.edges.length / 4)));
  const stride = Math.max(1, distinct.length / most);
  const thinned: number[] = [];
  for (let k = 0; k < distinct.length; k += stride) thinned.push(distinct[Math.floor(k)]!);
  return [low, ...thinned, ...(high > low ? [high] : [])];
};

const crossings = new Float64Array(256);
let stretches = new Float64Array(512);

/** The first x from low to high on a level that lies in none of the polygons, or null. */
const firstFree = (
  { edges, starts, lows, highs }: Around,
  y: number,
  low: number,
  high: number,
): number | null => {
  let count = 0;
  for (let j = 0; j < lows.length; j++) {
    if (lows[j]! > y || highs[j]! <= y) continue;
    let found = 0;
    for (let e = starts[j]!; e < starts[j + 1]! && found < crossings.length; e += 4) {
      const ay = edges[e + 1]!;
      const by = edges[e + 3]!;
      if (ay > y === by > y) continue;
      const x = edges[e]! + ((edges[e + 2]! - edges[e]!) * (y - ay)) / (by - ay);
      let at = found++;
      for (; at > 0 && crossings[at - 1]! > x; at--) crossings[at] = crossings[at - 1]!;
      crossings[at] = x;
    }
    for (let k = 0; k + 1 < found; k += 2) {
      if (crossings[k + 1]! > low && crossings[k]! < high)
        count = insert(count, crossings[k]!, crossings[k + 1]!);
    }
  }
  let x = low;
  for (let k = 0; k < count; k++) {
    if (stretches[2 * k]! >= x) break;
    x = Math.max(x, stretches[2 * k + 1]!);
    if (x > high) return null;
  }
  return x;
};

/** Keeps the stretches in the order of their starts. */
const insert = (count: number, from: number, to: number): number => {
  if (2 * count + 2 > stretches.length) {
    const longer = new Float64Array(stretches.length * 2);
    longer.set(stretches);
    stretches = longer;
  }
  let at = count;
  for (; at > 0 && stretches[2 * at - 2]! > from; at--) {
    stretches[2 * at] = stretches[2 * at - 2]!;
    stretches[2 * at + 1] = stretches[2 * at - 1]!;
  }
  stretches[2 * at] = from;
  stretches[2 * at + 1] = to;
  return count + 1;
};

/** Whether a stance is free of all on the floor at a place. */
const isFree = (f: Floor, stance: number, x: number, y: number): boolean => {
  const { reach } = f.plan.stances[stance]!;
  const [x0, x1, y0, y1] = [x + reach.x0, x + reach.x1, y + reach.y0, y + reach.y1];
  for (let j = 0; j < f.total; j++) {
    if (f.x0[j]! >= x1 || f.x1[j]! <= x0 || f.y0[j]! >= y1 || f.y1[j]! <= y0) continue;
    if (depthBetween(f, j, stance, x - f.x[j]!, y - f.y[j]!) > LAID_TOUCH / 2) return false;
  }
  return true;
};
