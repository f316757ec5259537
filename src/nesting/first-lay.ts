import { type Floor, takeUp } from './floor.ts';
import { goesInto } from './freedom.ts';
import { lay, orders } from './lay.ts';
import { usedLength } from './layout-of.ts';
import { record, restore, snapshotOf } from './snapshot.ts';

/** With more parts than this one order has to do: an answer is wanted at once. */
const FEW = 30;

/**
 * Lays all parts on an empty floor, in several orders where they are few, and keeps the best: the most area, then the
 * shortest strip. Gives the parts that can be laid at all; some may be off the floor still.
 */
export const firstLay = (f: Floor): readonly number[] => {
  const fit = f.plan.parts.map((_, i) => i).filter((i) => fitsSomewhere(f, i));
  const best = snapshotOf(f);
  let [most, least] = [-1, Infinity];
  for (const order of orders(f).slice(0, f.parts > FEW ? 1 : 3)) {
    for (let i = 0; i < f.parts; i++) takeUp(f, i);
    lay(
      f,
      order.filter((i) => fit.includes(i)),
    );
    const area = fit.reduce((sum, i) => sum + (f.room[i]! < 0 ? 0 : f.plan.parts[i]!.area), 0);
    const length = usedLength(f);
    if (area < most || (area === most && length >= least)) continue;
    [most, least] = [area, length];
    record(f, best);
  }
  restore(f, best);
  return fit;
};

/** Whether a part goes into some room as the rooms are now, were they empty. */
export const fitsSomewhere = (f: Floor, i: number): boolean =>
  f.plan.parts[i]!.stances.some((stance) => f.plan.rooms.some((_, room) => goesInto(f, stance, room)));
