import { type Crowd, crowdOf } from './crowd.ts';
import { emptyRooms } from './empty-rooms.ts';
import { firstLay } from './first-lay.ts';
import { floorOf } from './floor.ts';
import type { Layout } from './layout.ts';
import { layoutOf } from './layout-of.ts';
import { placeAll } from './place-all.ts';
import { planOf } from './plan.ts';
import { randomFrom } from './random.ts';
import { shorten } from './shorten.ts';
import type { Task } from './task.ts';

/** How far a search has come. */
export interface Progress {
  /** The best layout so far, always sound; the same object as long as none better is found. */
  readonly layout: Layout;
  /** Work done so far: pairs of pieces looked at while the first lay was improved. */
  readonly looked: number;
}

/** Pairs looked at between two reports: a few milliseconds. */
const SLICE = 20_000;

/**
 * Lays a task and improves the layout for as long as it is asked to go on. The first report is the first lay, made by
 * putting one piece after another; every further one comes after a few milliseconds of work. It may be left at any
 * moment: the last report holds the best layout. It ends by itself where nothing can be better, as far as it
 * knows: all pieces have found a place in the areas and none of those could be emptied, or the strip can be no shorter. The same seed gives the same reports. Pieces that find no
 * place stand in `unplaced`. Throws a RangeError where the task makes no sense.
 */
export function* improving(task: Task, seed: number): Generator<Progress, Progress> {
  const crowd = crowdOf(floorOf(planOf(task)), randomFrom(seed));
  const canBeLaid = firstLay(crowd.floor);
  let layout = layoutOf(crowd.floor);
  yield { layout, looked: 0 };
  let due = SLICE;
  for (const _ of search(crowd, canBeLaid, () => {
    layout = layoutOf(crowd.floor);
  })) {
    if (crowd.work.looked < due) continue;
    due = crowd.work.looked + SLICE;
    yield { layout, looked: crowd.work.looked };
  }
  return { layout, looked: crowd.work.looked };
}

/** First every piece finds its place, then the strip is made shorter, or fewer areas are used. */
function* search(c: Crowd, canBeLaid: readonly number[], onBetter: () => void): Generator<void, void> {
  yield* placeAll(c, canBeLaid, onBetter);
  if (c.floor.plan.task.ground.kind === 'strip') yield* shorten(c, onBetter);
  else yield* emptyRooms(c, canBeLaid, onBetter);
}
