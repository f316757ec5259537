import type { Crowd } from './crowd.ts';
import { stand } from './floor.ts';
import { clamped, free, goesInto } from './freedom.ts';

/** Brings a part back into its room by the shortest way; anywhere, where it is off the floor or stands too long for it. */
export const pushIn = (c: Crowd, i: number): void => {
  const f = c.floor;
  const room = f.room[i]!;
  if (room < 0 || !goesInto(f, f.stance[i]!, room)) putAnywhere(c, i);
  else standWithin(c, i, f.stance[i]!, f.x[i]!, f.y[i]!, room);
};

/** A place in any room for any stance that goes in. The part has one: those that have none are never on the floor. */
export const putAnywhere = (c: Crowd, i: number): void => {
  const f = c.floor;
  const { stances } = f.plan.parts[i]!;
  const rooms = f.plan.rooms.length;
  const from = Math.floor(c.random() * stances.length * rooms);
  for (let k = 0; k < stances.length * rooms; k++) {
    const at = (from + k) % (stances.length * rooms);
    const stance = stances[at % stances.length]!;
    const room = Math.floor(at / stances.length);
    if (!goesInto(f, stance, room)) continue;
    const x = free[0]! + (free[1]! - free[0]!) * c.random();
    const y = free[2]! + (free[3]! - free[2]!) * c.random();
    stand(f, i, stance, x, y, room);
    return;
  }
};

/** Two parts change places. */
export const exchange = (c: Crowd, i: number, j: number): void => {
  const { stance, x, y, room } = c.floor;
  const [ix, iy, iRoom] = [x[i]!, y[i]!, room[i]!];
  standWithin(c, i, stance[i]!, x[j]!, y[j]!, room[j]!);
  standWithin(c, j, stance[j]!, ix, iy, iRoom);
};

const standWithin = (c: Crowd, i: number, stance: number, x: number, y: number, room: number): void => {
  if (!goesInto(c.floor, stance, room)) putAnywhere(c, i);
  else stand(c.floor, i, stance, clamped(x, free[0]!, free[1]!), clamped(y, free[2]!, free[3]!), room);
};
