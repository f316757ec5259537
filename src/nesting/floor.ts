import { type Meetings, meetingOf, noMeetings } from './meetings.ts';
import { penetration, wayOut } from './penetration.ts';
import type { Plan } from './plan.ts';

/** Where every piece stands while it is sought where they can stand. First the parts of the plan, then what is fixed. */
export interface Floor {
  readonly plan: Plan;
  readonly meetings: Meetings;
  /** How many parts; from here on to the total they are fixed. */
  readonly parts: number;
  readonly total: number;
  readonly stance: Int32Array;
  /** The room a part is in; −1 where it is not laid. */
  readonly room: Int32Array;
  readonly x: Float64Array;
  readonly y: Float64Array;
  /** What each reaches over. */
  readonly x0: Float64Array;
  readonly y0: Float64Array;
  readonly x1: Float64Array;
  readonly y1: Float64Array;
  /** What a room's box ends at; the last room of a strip is made shorter in the search. */
  readonly roomEnd: Float64Array;
}

export const floorOf = (plan: Plan): Floor => {
  const parts = plan.parts.length;
  const total = parts + plan.fixed.length;
  const numbers = () => new Float64Array(total);
  const floor: Floor = {
    plan,
    meetings: noMeetings(plan),
    parts,
    total,
    stance: new Int32Array(total),
    room: new Int32Array(total).fill(-1),
    x: numbers(),
    y: numbers(),
    x0: numbers(),
    y0: numbers(),
    x1: numbers(),
    y1: numbers(),
    roomEnd: Float64Array.from(plan.rooms, ({ x1 }) => x1),
  };
  for (let i = 0; i < parts; i++) takeUp(floor, i);
  plan.fixed.forEach(({ stance, x, y }, k) => {
    stand(floor, parts + k, stance, x, y, 0);
  });
  return floor;
};

export const stand = (f: Floor, i: number, stance: number, x: number, y: number, room: number): void => {
  const { reach } = f.plan.stances[stance]!;
  f.stance[i] = stance;
  f.room[i] = room;
  f.x[i] = x;
  f.y[i] = y;
  f.x0[i] = x + reach.x0;
  f.y0[i] = y + reach.y0;
  f.x1[i] = x + reach.x1;
  f.y1[i] = y + reach.y1;
};

/** Takes a part off the floor: it then reaches over nothing. */
export const takeUp = (f: Floor, i: number): void => {
  f.room[i] = -1;
  f.x0[i] = Infinity;
  f.x1[i] = -Infinity;
  f.y0[i] = Infinity;
  f.y1[i] = -Infinity;
};

/** How deep two overlap, mm, as they stand. */
export const overlapOf = (f: Floor, i: number, j: number): number => {
  if (f.x0[i]! >= f.x1[j]! || f.x1[i]! <= f.x0[j]! || f.y0[i]! >= f.y1[j]! || f.y1[i]! <= f.y0[j]!) return 0;
  return depthBetween(f, j, f.stance[i]!, f.x[i]! - f.x[j]!, f.y[i]! - f.y[j]!);
};

/** How deep a stance at (dx, dy) from the standing j overlaps it. The way out is left in wayOut, not yet turned back. */
export const depthBetween = (f: Floor, j: number, stance: number, dx: number, dy: number): number => {
  const { noFit, cosine, sine } = meetingOf(f.meetings, f.stance[j]!, stance);
  return penetration(noFit, cosine * dx - sine * dy, sine * dx + cosine * dy);
};

/** The same, with the way out in the floor's own directions. */
export const wayOutOf = (f: Floor, j: number, stance: number, dx: number, dy: number): number => {
  const { noFit, cosine, sine } = meetingOf(f.meetings, f.stance[j]!, stance);
  const depth = penetration(noFit, cosine * dx - sine * dy, sine * dx + cosine * dy);
  const ox = wayOut[0]!;
  const oy = wayOut[1]!;
  wayOut[0] = cosine * ox + sine * oy;
  wayOut[1] = cosine * oy - sine * ox;
  return depth;
};
