import { depthBetween, type Floor, overlapOf, stand, wayOutOf } from './floor.ts';
import { wayOut } from './penetration.ts';
import type { Random } from './random.ts';

/** A floor on which pieces may overlap while they are being separated. */
export interface Crowd {
  readonly floor: Floor;
  readonly random: Random;
  /** How deep each pair overlaps, mm, by i × total + j, and how much that counts. Both the same for j and i. */
  readonly depth: Float64Array;
  readonly weight: Float64Array;
  /** How many pairs have been looked at: a measure of work done that is the same on every machine. */
  readonly work: { looked: number };
}

export const crowdOf = (floor: Floor, random: Random): Crowd => ({
  floor,
  random,
  depth: new Float64Array(floor.total ** 2),
  weight: new Float64Array(floor.total ** 2).fill(1),
  work: { looked: 0 },
});

/** What a part would cost at a place: the weighted depths of its overlaps, or something above the bound. */
export const costAt = (c: Crowd, i: number, stance: number, x: number, y: number, bound: number): number => {
  const f = c.floor;
  const { x0, x1, y0, y1, total } = f;
  const { reach } = f.plan.stances[stance]!;
  const left = x + reach.x0;
  const right = x + reach.x1;
  const low = y + reach.y0;
  const high = y + reach.y1;
  const row = i * total;
  let cost = 0;
  for (let j = 0; j < total; j++) {
    if (x0[j]! >= right || x1[j]! <= left || y0[j]! >= high || y1[j]! <= low || j === i) continue;
    c.work.looked++;
    cost += c.weight[row + j]! * depthBetween(f, j, stance, x - f.x[j]!, y - f.y[j]!);
    if (cost >= bound) return cost;
  }
  return cost;
};

/** Two shifts that would each end one overlap: x, y, weighted depth; the costliest first. Written by pushesAt. */
export const pushes = new Float64Array(6);

/** The ways out of the two costliest overlaps of a part at a place, into pushes; gives the whole cost. */
export const pushesAt = (c: Crowd, i: number, stance: number, x: number, y: number): number => {
  const f = c.floor;
  const { x0, x1, y0, y1, total } = f;
  const { reach } = f.plan.stances[stance]!;
  const left = x + reach.x0;
  const right = x + reach.x1;
  const low = y + reach.y0;
  const high = y + reach.y1;
  const row = i * total;
  pushes.fill(0);
  let cost = 0;
  for (let j = 0; j < total; j++) {
    if (x0[j]! >= right || x1[j]! <= left || y0[j]! >= high || y1[j]! <= low || j === i) continue;
    c.work.looked++;
    const weighted = c.weight[row + j]! * wayOutOf(f, j, stance, x - f.x[j]!, y - f.y[j]!);
    if (!(weighted > 0)) continue;
    cost += weighted;
    if (weighted > pushes[2]!) {
      pushes.copyWithin(3, 0, 3);
      keepPush(0, weighted);
    } else if (weighted > pushes[5]!) keepPush(3, weighted);
  }
  return cost;
};

const keepPush = (at: number, weighted: number): void => {
  pushes[at] = wayOut[0]!;
  pushes[at + 1] = wayOut[1]!;
  pushes[at + 2] = weighted;
};

/** Moves a part and measures its overlaps anew. */
export const moveTo = (c: Crowd, i: number, stance: number, x: number, y: number, room: number): void => {
  stand(c.floor, i, stance, x, y, room);
  measure(c, i);
};

export const measure = (c: Crowd, i: number): void => {
  const { total } = c.floor;
  for (let j = 0; j < total; j++) {
    const depth = j === i ? 0 : overlapOf(c.floor, i, j);
    c.depth[i * total + j] = depth;
    c.depth[j * total + i] = depth;
  }
};

/** What a part costs where it stands. */
export const costOf = (c: Crowd, i: number): number => {
  const row = i * c.floor.total;
  let cost = 0;
  for (let j = row; j < row + c.floor.total; j++) cost += c.weight[j]! * c.depth[j]!;
  return cost;
};
