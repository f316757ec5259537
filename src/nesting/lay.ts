import { type Floor, stand, takeUp } from './floor.ts';
import { leftmost, type Place } from './leftmost.ts';
import type { Part } from './plan.ts';

/**
 * Lays the parts one after another, each where it reaches least far (bottom-left), over what lies on the floor. Gives
 * the parts that found no place; they stay off the floor.
 */
export const lay = (f: Floor, order: readonly number[]): readonly number[] => {
  const left: number[] = [];
  const known: Known = new Map();
  for (const i of order) {
    takeUp(f, i);
    const place = nearestPlace(f, f.plan.parts[i]!, known);
    if (place === null) left.push(i);
    else stand(f, i, place.stance, place.x, place.y, place.room);
  }
  return left;
};

/** By room and stance, the x below which there is no place: the fuller the floor, the further it is. */
type Known = Map<string, number>;

/** In the first room that has one, the place of whichever stance reaches least far. */
const nearestPlace = (f: Floor, { stances }: Part, known: Known): Place | null => {
  for (let room = 0; room < f.plan.rooms.length; room++) {
    let best: Place | null = null;
    for (const stance of stances) {
      const key = `${room} ${stance}`;
      const limit = best?.end ?? Infinity;
      const from = known.get(key) ?? -Infinity;
      const found = leftmost(f, stance, room, from, limit);
      known.set(key, Math.max(from, found?.x ?? limit - f.plan.stances[stance]!.span.x1));
      if (found !== null && (best === null || found.end < best.end)) best = found;
    }
    if (best !== null) return best;
  }
  return null;
};

/** The parts in the order large to small, by area and length together, by area, by length. */
export const orders = (f: Floor): readonly (readonly number[])[] => {
  const { parts, bases } = f.plan;
  const lengths = parts.map(({ stances }) => {
    const { x0, y0, x1, y1 } = f.plan.stances[stances[0]!]?.span ?? { x0: 0, y0: 0, x1: 0, y1: 0 };
    return Math.max(x1 - x0, y1 - y0);
  });
  const by = (measure: (i: number) => number) =>
    parts
      .map((_, i) => i)
      .sort((a, b) => measure(b) - measure(a) || parts[a]!.base - parts[b]!.base || a - b);
  const boxes = (i: number) => bases[parts[i]!.base]!.area * lengths[i]!;
  return [by(boxes), by((i) => parts[i]!.area), by((i) => lengths[i]!)];
};
