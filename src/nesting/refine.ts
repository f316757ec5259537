import { type Crowd, costAt, pushes, pushesAt } from './crowd.ts';
import { clamped, free, goesInto } from './freedom.ts';

/** Where refined has ended: x, y. */
export const spot = new Float64Array(2);

const ROUNDS = 8;
/** A round that gains less than this part is the last. */
const GAIN = 1e-4;

/** How far past an edge (mm) a step goes, so that rounding leaves no overlap. */
const PAST = 1e-3;
/** Ways out nearer to parallel than this sine do not cross anywhere near. */
const SLANT = 0.05;

/**
 * From a place to one that costs less; gives the cost and leaves the place in spot. The cost is a sum of distances to
 * edges, so it is least where edges meet: from each place the steps tried end the costliest overlap the short way,
 * level or upright, the second costliest, or both at once.
 */
export const refined = (c: Crowd, i: number, stance: number, room: number, x: number, y: number): number => {
  if (!goesInto(c.floor, stance, room)) return Infinity;
  spot[0] = clamped(x, free[0]!, free[1]!);
  spot[1] = clamped(y, free[2]!, free[3]!);
  let cost = Infinity;
  for (let round = 0; round < ROUNDS; round++) {
    const here = pushesAt(c, i, stance, spot[0]!, spot[1]!);
    if (here === 0) return 0;
    const before = Math.min(cost, here);
    cost = stepped(c, i, stance, before);
    if (!(cost < before * (1 - GAIN))) return cost;
  }
  return cost;
};

/** Tries the steps that the pushes offer from spot, and takes the best; gives its cost. */
const stepped = (c: Crowd, i: number, stance: number, cost: number): number => {
  const x = spot[0]!;
  const y = spot[1]!;
  const ax = pushes[0]!;
  const ay = pushes[1]!;
  const a = Math.sqrt(ax * ax + ay * ay);
  const aPast = 1 + PAST / a;
  const aa = a * a * aPast;
  let least = attempt(c, i, stance, x + ax * aPast, y + ay * aPast, cost);
  if (Math.abs(ax) > SLANT * a) least = attempt(c, i, stance, x + aa / ax, y, least);
  if (Math.abs(ay) > SLANT * a) least = attempt(c, i, stance, x, y + aa / ay, least);
  if (!(pushes[5]! > 0)) return least;
  const bx = pushes[3]!;
  const by = pushes[4]!;
  const b = Math.sqrt(bx * bx + by * by);
  const bPast = 1 + PAST / b;
  const bb = b * b * bPast;
  least = attempt(c, i, stance, x + bx * bPast, y + by * bPast, least);
  const across = ax * by - ay * bx;
  if (!(Math.abs(across) > SLANT * a * b)) return least;
  return attempt(c, i, stance, x + (aa * by - bb * ay) / across, y + (bb * ax - aa * bx) / across, least);
};

const attempt = (c: Crowd, i: number, stance: number, x: number, y: number, least: number): number => {
  const px = clamped(x, free[0]!, free[1]!);
  const py = clamped(y, free[2]!, free[3]!);
  const cost = costAt(c, i, stance, px, py, least);
  if (!(cost < least)) return least;
  spot[0] = px;
  spot[1] = py;
  return cost;
};
