import type { Crowd } from './crowd.ts';
import { fitsSomewhere } from './first-lay.ts';
import { takeUp } from './floor.ts';
import { putAnywhere } from './push-in.ts';
import { separate } from './separate.ts';
import { record, restore, snapshotOf } from './snapshot.ts';

/** How often the parts of a room are put among the others before it is left as it is. */
const TRIES = 3;

/**
 * Empties one room after another, the one that holds the least first, where its parts find places in the others that are in
 * use: what is left whole is of more use than two that are begun. Begins where all parts in `laid` lie free. Yields
 * often; `onFewer` is called when one room fewer is in use. Ends where none has been emptied in so many tries.
 */
export function* emptyRooms(c: Crowd, laid: readonly number[], onFewer: () => void): Generator<void, void> {
  const f = c.floor;
  const ends = f.roomEnd.slice();
  const best = snapshotOf(f);
  const kept = new Set<number>();
  for (;;) {
    const room = leastFilled(c, laid, kept);
    if (room === null) return;
    if (yield* empty(c, laid, room)) {
      record(f, best);
      onFewer();
    } else {
      restore(f, best);
      kept.add(room);
    }
    f.roomEnd.set(ends);
  }
}

/** Lays the parts of a room in the others; it and those that are not in use are shut meanwhile. */
function* empty(c: Crowd, laid: readonly number[], room: number): Generator<void, boolean> {
  const f = c.floor;
  const open = roomsInUse(c, laid);
  open.delete(room);
  f.plan.rooms.forEach((_, k) => {
    if (!open.has(k)) f.roomEnd[k] = Number.NEGATIVE_INFINITY;
  });
  const moving = laid.filter((i) => f.room[i] === room);
  const space = [...open].reduce((sum, k) => sum + f.plan.rooms[k]!.area, 0);
  if (areaOf(c, laid) > space || !moving.every((i) => fitsSomewhere(f, i))) return false;
  const before = snapshotOf(f);
  for (let k = 0; k < TRIES; k++) {
    restore(f, before);
    for (const i of moving) {
      takeUp(f, i);
      putAnywhere(c, i);
    }
    if (yield* separate(c, () => {})) return true;
  }
  return false;
}

/** The rooms that hold a part or a pinned piece. */
const roomsInUse = ({ floor: f }: Crowd, laid: readonly number[]): Set<number> =>
  new Set([...laid.map((i) => f.room[i]!), ...pinnedRooms(f.plan)]);

const pinnedRooms = ({ rooms, task: { pinned } }: Crowd['floor']['plan']): readonly number[] =>
  rooms.flatMap(({ container }, k) => (pinned.some((pin) => pin.container === container) ? [k] : []));

const areaOf = ({ floor: { plan } }: Crowd, parts: readonly number[]): number =>
  parts.reduce((sum, i) => sum + plan.parts[i]!.area, 0);

/** Of the rooms in use that are not to be kept, that with the least area under parts; null where there is none. */
const leastFilled = (c: Crowd, laid: readonly number[], kept: ReadonlySet<number>): number | null => {
  const pinned = pinnedRooms(c.floor.plan);
  const areaIn = (room: number) =>
    areaOf(
      c,
      laid.filter((i) => c.floor.room[i] === room),
    );
  const rooms = [...new Set(laid.map((i) => c.floor.room[i]!))]
    .filter((room) => !kept.has(room) && !pinned.includes(room))
    .sort((a, b) => areaIn(a) - areaIn(b) || a - b);
  return rooms[0] ?? null;
};
