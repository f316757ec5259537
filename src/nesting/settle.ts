import { bar, candidates, keep } from './candidates.ts';
import { type Crowd, costAt, costOf, moveTo } from './crowd.ts';
import { clamped, free, goesInto } from './freedom.ts';
import { refined, spot } from './refine.ts';

/** Places tried anywhere and near, and how many of them are improved. */
const FAR = 8;
const NEAR = 4;
const best = candidates(3);

/**
 * Moves a part to a better place if one is found: places anywhere and places near its own are tried, and the best few
 * improved along the ways out of their overlaps. (Sampled places as Elkeran 2013 has them, in the search of one piece
 * at a time of Egeblad, Nielsen and Odgaard 2007.)
 */
export const settle = (c: Crowd, i: number): void => {
  const f = c.floor;
  const now = costOf(c, i);
  best.cost.fill(Infinity);
  keep(best, now, f.stance[i]!, f.x[i]!, f.y[i]!, f.room[i]!);
  for (let k = 0; k < FAR; k++) tryAnywhere(c, i);
  for (let k = 0; k < NEAR; k++) tryNear(c, i, k % 2 === 0);
  let least = now;
  let chosen = -1;
  for (let k = 0; k < best.count && best.cost[k]! < Infinity && least > 0; k++) {
    const cost = refined(c, i, best.stance[k]!, best.room[k]!, best.x[k]!, best.y[k]!);
    if (!(cost < least)) continue;
    least = cost;
    chosen = k;
    best.x[k] = spot[0]!;
    best.y[k] = spot[1]!;
  }
  if (chosen >= 0) moveTo(c, i, best.stance[chosen]!, best.x[chosen]!, best.y[chosen]!, best.room[chosen]!);
};

const anyOf = (c: Crowd, count: number): number => (count === 1 ? 0 : Math.floor(c.random() * count));

const tryAnywhere = (c: Crowd, i: number): void => {
  const { stances } = c.floor.plan.parts[i]!;
  const stance = stances[anyOf(c, stances.length)]!;
  const room = anyOf(c, c.floor.plan.rooms.length);
  if (!goesInto(c.floor, stance, room)) return;
  const x = free[0]! + (free[1]! - free[0]!) * c.random();
  const y = free[2]! + (free[3]! - free[2]!) * c.random();
  const cost = costAt(c, i, stance, x, y, bar(best));
  if (cost < bar(best)) keep(best, cost, stance, x, y, room);
};

/** Half a piece's lesser size either way. */
const tryNear = (c: Crowd, i: number, asItStands: boolean): void => {
  const f = c.floor;
  const { stances } = f.plan.parts[i]!;
  const stance = asItStands ? f.stance[i]! : stances[anyOf(c, stances.length)]!;
  const room = f.room[i]!;
  if (!goesInto(f, stance, room)) return;
  const { reach } = f.plan.stances[stance]!;
  const size = Math.min(reach.x1 - reach.x0, reach.y1 - reach.y0);
  const x = clamped(f.x[i]! + size * (c.random() - 0.5), free[0]!, free[1]!);
  const y = clamped(f.y[i]! + size * (c.random() - 0.5), free[2]!, free[3]!);
  const cost = costAt(c, i, stance, x, y, bar(best));
  if (cost < bar(best)) keep(best, cost, stance, x, y, room);
};
