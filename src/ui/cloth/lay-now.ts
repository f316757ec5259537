import { type ClothLay, clothLay, withPlacement } from '../../cloth/cloth-lay.ts';
import layWorker from '../../cloth/lay.worker.ts?beside';
import type { LayAnswer, LayOrder } from '../../cloth/lay-messages.ts';
import { layPieces } from '../../cloth/lay-pieces.ts';
import { layTask } from '../../cloth/lay-task.ts';
import { pinsThatLie } from '../../cloth/pins-that-lie.ts';
import type { Layout } from '../../nesting/layout.ts';
import { keepPins } from '../../state/cloth-actions.ts';
import { layOf } from '../../state/lay-of.ts';
import { onceResting } from '../../state/resting.ts';
import { useStudio } from '../../state/studio.ts';
import { type Chosen, capsToCut } from './caps-to-cut.ts';

/** The cutting lay on the table. */
export interface LayNow {
  /** Null until the first answer is there. */
  readonly lay: ClothLay | null;
  /** What it was laid for: what is chosen may have changed since. */
  readonly laidFor: Chosen | null;
  /** The names of those that cannot be sewn in this cloth. */
  readonly unsewn: readonly string[];
  /** Part of the time that bettering has used; null while it rests. */
  readonly progress: number | null;
  readonly message: string | null;
}

let now: LayNow = { lay: null, laidFor: null, unsewn: [], progress: null, message: null };
const listeners = new Set<() => void>();

const tell = (change: Partial<LayNow>): void => {
  now = { ...now, ...change };
  for (const listener of listeners) listener();
};

export const layNow = (): LayNow => now;

/** The lay on the table, if it is that of what is chosen. */
export const layFor = ({ good, shelf, lay }: Chosen): ClothLay | null => {
  const { laidFor } = now;
  return laidFor?.good === good && laidFor.shelf === shelf && laidFor.lay === lay ? now.lay : null;
};

export const onLay = (listener: () => void): (() => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};

/** How long a lay is bettered when it is asked for, ms. */
const TIME = 20_000;
/** The same lay comes out of the same pieces. */
const SEED = 1;

/** Kept from one lay to the next, since a warm one is several times as quick; given up where it is interrupted. */
let worker: Worker | null = null;
let isLaying = false;
/** Which laying is the latest: an earlier one that still waits for its caps comes too late. */
let latest = 0;

/** Stops bettering and keeps the best so far. */
export const stopLaying = (): void => {
  latest++;
  if (isLaying) dismiss();
};

const dismiss = (): void => {
  worker?.terminate();
  worker = null;
  rest();
};

const rest = (): void => {
  isLaying = false;
  if (now.progress !== null) tell({ progress: null });
};

const UNFETCHED = 'A cap of the shelf could not be fetched to be cut with this one: please reload the page.';

/** Lays the chosen cloth anew round what was put down by hand; betters it for a while if wanted. */
const layAnew = async (time: number): Promise<void> => {
  stopLaying();
  const turn = latest;
  const chosen = useStudio.getState();
  const cut = await capsToCut(chosen).catch(() => null);
  if (turn !== latest || cut?.caps.length === 0) return;
  if (cut === null) return tell({ message: UNFETCHED });
  const { caps, unsewn } = cut;
  const { cloth, pins: put } = layOf(chosen);
  const spec = chosen.good.cloths[cloth];
  const wish = { caps, cloth, spec };
  const pieces = layPieces(wish);
  const pins = pinsThatLie(put, pieces, spec);
  // What may lie so no more is held no longer. That is followed as any other choice is.
  if (pins.length < put.length) return keepPins(pins);
  const order: LayOrder = { task: layTask(pieces, spec, pins), seed: SEED, time };
  worker ??= new Worker(layWorker, { type: 'module' });
  isLaying = true;
  const show = (layout: Layout) => tell({ lay: clothLay(wish, pieces, layout), laidFor: chosen });
  // Each order has the worker to itself: these take the place of those before.
  worker.onmessage = ({ data }: MessageEvent<LayAnswer>) => take(data, show);
  worker.onerror = () =>
    take({ kind: 'failed', message: 'The pieces could not be laid: please reload the page.' }, show);
  worker.postMessage(order);
  tell({ unsewn, message: null, progress: time > 0 ? 0 : null });
};

const take = (answer: LayAnswer, show: (layout: Layout) => void): void => {
  if (answer.kind === 'layout') {
    show(answer.layout);
  } else if (answer.kind === 'progress') {
    tell({ progress: answer.done });
  } else if (answer.kind === 'failed') {
    dismiss();
    tell({ message: answer.message });
  } else {
    rest();
  }
};

export const betterLay = (): void => void layAnew(TIME);

/** Cloth is laid once the hand has rested this long, ms. */
const REST = 300;

/**
 * Lays again whenever cap or cloth have changed and rest, for as long as the Cloth stage is open. What was laid when it was
 * open before is still there if it is that of what is chosen. Returns how to stop.
 */
export const keepLay = (): (() => void) => {
  const resting = onceResting(() => void layAnew(0));
  if (layFor(useStudio.getState()) === null) {
    tell({ lay: null });
    void layAnew(0);
  }
  const stop = useStudio.subscribe((state, before) => {
    const changed = state.good !== before.good || state.shelf !== before.shelf;
    const letGo = state.moving === null && before.moving !== null;
    if (changed || letGo) resting.soon(REST);
    else if (state.lay !== before.lay) follow(state, before);
  });
  return () => {
    resting.stop();
    stop();
    stopLaying();
    dismiss();
  };
};

/** What is chosen of the lay itself is laid at once. */
const follow = (chosen: Chosen, before: Chosen): void => {
  const { cloth, pins } = layOf(chosen);
  const last = pins.at(-1);
  if (cloth !== layOf(before).cloth) tell({ lay: null });
  // What a hand has just put down stays there meanwhile.
  else if (last && now.lay && !before.lay.pins.includes(last)) tell({ lay: withPlacement(now.lay, last) });
  void layAnew(0);
};
