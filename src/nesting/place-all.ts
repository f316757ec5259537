import type { Crowd } from './crowd.ts';
import { takeUp } from './floor.ts';
import { putAnywhere } from './push-in.ts';
import { separate } from './separate.ts';
import { record, restore, snapshotOf } from './snapshot.ts';

/**
 * Finds places for parts that have none, in rooms that stay as they are: they are put anywhere and all parts
 * separated, by turns with all of them and with one more than lie free. Yields often; `onMore` is called when more
 * area lies free than ever. Ends when every part that can be laid has its place.
 */
export function* placeAll(c: Crowd, canBeLaid: readonly number[], onMore: () => void): Generator<void, void> {
  const f = c.floor;
  const best = snapshotOf(f);
  for (let round = 0; ; round++) {
    const missing = canBeLaid.filter((i) => f.room[i]! < 0);
    if (missing.length === 0) return;
    const added = round % 2 === 0 ? missing : [missing[Math.floor(c.random() * missing.length)]!];
    for (const i of added) putAnywhere(c, i);
    // Every other time one that lies free makes way, if it is smaller: the larger are harder to place.
    if (round % 4 === 3) makeWay(c, canBeLaid, added[0]!);
    if (yield* separate(c, () => {})) {
      record(f, best);
      onMore();
    } else restore(f, best);
  }
}

const makeWay = (c: Crowd, among: readonly number[], newcomer: number): void => {
  const { parts } = c.floor.plan;
  const smaller = among.filter((i) => c.floor.room[i]! >= 0 && parts[i]!.area < parts[newcomer]!.area);
  if (smaller.length > 0) takeUp(c.floor, smaller[Math.floor(c.random() * smaller.length)]!);
};
