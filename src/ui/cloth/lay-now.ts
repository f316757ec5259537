import { type ClothLay, clothLay, withPlacement } from '../../cloth/cloth-lay.ts';
import layWorker from '../../cloth/lay.worker.ts?beside';
import type { LayAnswer, LayOrder } from '../../cloth/lay-messages.ts';
import { type LayPiece, layPieces } from '../../cloth/lay-pieces.ts';
import { layTask } from '../../cloth/lay-task.ts';
import type { LayWish } from '../../cloth/lay-wish.ts';
import { turnAmong } from '../../cloth/rotations-on.ts';
import { keepPins } from '../../state/cloth-actions.ts';
import type { LayChoice } from '../../state/lay-choice.ts';
import { onceResting } from '../../state/resting.ts';
import { useStudio } from '../../state/studio.ts';
import { type CapToCut, capsToCut } from './caps-to-cut.ts';

/** The cutting lay on the table. */
export interface LayNow {
  /** Null until the first answer is there. */
  readonly lay: ClothLay | null;
  /** The names of those that cannot be sewn in this cloth. */
  readonly unsewn: readonly string[];
  /** Part of the time that bettering has used; null while it rests. */
  readonly progress: number | null;
  readonly message: string | null;
}

let now: LayNow = { lay: null, unsewn: [], progress: null, message: null };
const listeners = new Set<() => void>();

const tell = (change: Partial<LayNow>): void => {
  now = { ...now, ...change };
  for (const listener of listeners) listener();
};

export const layNow = (): LayNow => now;
export const onLay = (listener: () => void): (() => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};

/** How long a lay is bettered when it is asked for, ms. */
const TIME = 20_000;
/** The same lay comes out of the same pieces. */
const SEED = 1;

let worker: Worker | null = null;
/** Which laying is the latest: an earlier one that still waits for its caps comes too late. */
let latest = 0;

/** Stops bettering and keeps the best so far. */
export const stopLaying = (): void => {
  latest++;
  rest();
};

const rest = (): void => {
  worker?.terminate();
  worker = null;
  if (now.progress !== null) tell({ progress: null });
};

/** What is cut together now. */
export const capsNow = async (): Promise<readonly CapToCut[]> =>
  (await capsToCut(useStudio.getState().lay)).caps;

const UNFETCHED = 'A cap of the shelf could not be fetched to be cut with this one: please reload the page.';

/** Lays the chosen cloth anew round what was put down by hand; betters it for a while if wanted. */
const layAnew = async (time: number): Promise<void> => {
  stopLaying();
  const turn = latest;
  const cut = await capsToCut(useStudio.getState().lay).catch(() => null);
  if (turn !== latest || cut?.caps.length === 0) return;
  if (cut === null) return tell({ message: UNFETCHED });
  const { caps, unsewn } = cut;
  const { good, lay } = useStudio.getState();
  const { cloth } = lay;
  const spec = good.cloths[cloth];
  const wish = { caps, cloth, spec };
  const pieces = layPieces(wish);
  const grounds = Math.max(1, spec.scraps.length);
  const pins = lay.pins.filter(
    ({ piece, container, rotation }) =>
      container < grounds &&
      pieces.some(({ id, rotations }) => id === piece && turnAmong(rotations, rotation) >= 0),
  );
  // What is no longer cut, lay on a scrap that is gone or as it may lie no more is held no longer. That is followed as any
  // other choice is.
  if (pins.length < lay.pins.length) return keepPins(pins);
  const order: LayOrder = { task: layTask(pieces, spec, pins), seed: SEED, time };
  worker = new Worker(layWorker, { type: 'module' });
  worker.addEventListener('message', ({ data }: MessageEvent<LayAnswer>) => take(data, wish, pieces));
  worker.addEventListener('error', () =>
    take({ kind: 'failed', message: 'The pieces could not be laid: please reload the page.' }, wish, pieces),
  );
  worker.postMessage(order);
  tell({ unsewn, message: null, progress: time > 0 ? 0 : null });
};

const take = (answer: LayAnswer, wish: LayWish, pieces: readonly LayPiece[]): void => {
  if (answer.kind === 'layout') {
    tell({ lay: clothLay(wish, pieces, answer.layout) });
  } else if (answer.kind === 'progress') {
    tell({ progress: answer.done });
  } else {
    rest();
    if (answer.kind === 'failed') tell({ message: answer.message });
  }
};

export const betterLay = (): void => void layAnew(TIME);

/** Cloth is laid once the hand has rested this long, ms. */
const REST = 300;

/** Lays again whenever cap or cloth have changed and rest, for as long as the Cloth stage is open. Returns how to stop. */
export const keepLay = (): (() => void) => {
  const resting = onceResting(() => void layAnew(0));
  void layAnew(0);
  const stop = useStudio.subscribe((state, before) => {
    const changed = state.good !== before.good || state.shelf !== before.shelf;
    const letGo = state.moving === null && before.moving !== null;
    if (changed || letGo) resting.soon(REST);
    else if (state.lay !== before.lay) follow(state.lay, before.lay);
  });
  return () => {
    resting.stop();
    stop();
    stopLaying();
  };
};

/** What is chosen of the lay itself is laid at once. */
const follow = ({ cloth, pins }: LayChoice, before: LayChoice): void => {
  const last = pins.at(-1);
  if (cloth !== before.cloth) tell({ lay: null });
  // What a hand has just put down stays there meanwhile.
  else if (last && now.lay && !before.pins.includes(last)) tell({ lay: withPlacement(now.lay, last) });
  void layAnew(0);
};
