import { SAME_POINT } from '../geometry/tolerance.ts';
import type { Crowd } from './crowd.ts';
import { stand } from './floor.ts';
import { usedLength } from './layout-of.ts';
import { exchange, pushIn } from './push-in.ts';
import { separate } from './separate.ts';
import { record, restore, snapshotOf } from './snapshot.ts';

/** Parts of the length by which the end is drawn in: at first, at most, at least. */
const FIRST = 0.01;
const MOST = 0.02;
const LEAST = 0.0005;
/** A step grows by this where it succeeds, and shrinks where it fails so many times. */
const GROW = 1.3;
const SHRINK = 0.5;
const TRIES = 3;

/**
 * Makes a strip on which all parts lie free shorter and shorter: its end is drawn in, what lies beyond a line anywhere
 * moves up with it, and the parts are separated. Where that fails two parts change places and it is tried again; at
 * last a smaller step is taken. (Umetani et al. 2009; Elkeran 2013.) Yields often; `onShorter` is called when a
 * shorter layout lies on the floor. Ends where nothing shorter can be.
 */
export function* shorten(c: Crowd, onShorter: () => void): Generator<void, void> {
  const f = c.floor;
  const half = f.plan.task.spacing / 2;
  const best = snapshotOf(f);
  const trial = snapshotOf(f);
  const laid = f.plan.parts.map((_, i) => i).filter((i) => f.room[i]! >= 0);
  const bound = leastLength(c, laid);
  let length = usedLength(f);
  let step = FIRST;
  let failures = 0;
  while (length > bound + SAME_POINT) {
    if (failures === 0) {
      f.roomEnd[0] = Math.max(bound, length * (1 - step)) + half;
      closeUp(c, laid, length + half - f.roomEnd[0]!);
    }
    for (const i of laid) pushIn(c, i);
    if (yield* separate(c, () => record(f, trial))) {
      const shorter = usedLength(f);
      if (!(shorter < length)) return;
      length = shorter;
      record(f, best);
      onShorter();
      step = Math.min(MOST, step * GROW);
      failures = 0;
      continue;
    }
    failures++;
    if (failures < TRIES) {
      restore(f, trial);
      disturb(c, laid);
    } else {
      restore(f, best);
      step = Math.max(LEAST, step * SHRINK);
      failures = 0;
    }
  }
}

/** What stands beyond a line across the strip, drawn at random, moves up to it. */
const closeUp = (c: Crowd, laid: readonly number[], by: number): void => {
  const f = c.floor;
  const line = f.roomEnd[0]! * c.random();
  for (const i of laid) if (f.x[i]! > line) stand(f, i, f.stance[i]!, f.x[i]! - by, f.y[i]!, 0);
};

/** Two parts of different outlines change places. */
const disturb = (c: Crowd, laid: readonly number[]): void => {
  const { parts } = c.floor.plan;
  const one = laid[Math.floor(c.random() * laid.length)]!;
  const others = laid.filter((i) => parts[i]!.base !== parts[one]!.base);
  if (others.length > 0) exchange(c, one, others[Math.floor(c.random() * others.length)]!);
};

/** No strip can be shorter than its pins reach, its longest piece or the area of all, mm. */
const leastLength = ({ floor: f }: Crowd, laid: readonly number[]): number => {
  const { task, parts, stances, rooms } = f.plan;
  const half = task.spacing / 2;
  const high = rooms[0]!.y1 - rooms[0]!.y0;
  const width = task.ground.kind === 'strip' ? task.ground.width : 0;
  let least = laid.reduce((sum, i) => sum + parts[i]!.area, 0) / width;
  for (const i of laid) {
    const lengths = parts[i]!.stances.map((stance) => stances[stance]!.span)
      .filter(({ y0, y1 }) => y1 - y0 <= high + SAME_POINT)
      .map(({ x0, x1 }) => x1 - x0);
    least = Math.max(least, Math.min(...lengths) - 2 * half);
  }
  for (let i = f.parts; i < f.total; i++) {
    least = Math.max(least, f.x[i]! + stances[f.stance[i]!]!.span.x1 - half);
  }
  return least;
};
