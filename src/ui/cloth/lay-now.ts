import { type ClothLay, clothLay, withPlacement } from '../../cloth/cloth-lay.ts';
import layWorker from '../../cloth/lay.worker.ts?beside';
import type { LayAnswer, LayOrder } from '../../cloth/lay-messages.ts';
import { type LayPiece, layPieces } from '../../cloth/lay-pieces.ts';
import { layTask } from '../../cloth/lay-task.ts';
import type { LayWish } from '../../cloth/lay-wish.ts';
import type { Placement } from '../../nesting/task.ts';
import type { Cloth } from '../../pattern/piece.ts';
import { onceResting } from '../../state/resting.ts';
import { useStudio } from '../../state/studio.ts';
import { type CapToCut, capsToCut } from './caps-to-cut.ts';

/** The cutting lay on the table. */
export interface LayNow {
  readonly cloth: Cloth;
  /** Null until the first answer is there. */
  readonly lay: ClothLay | null;
  /** How many of the cap on the table are laid together. */
  readonly here: number;
  /** How many of each cap of the shelf are laid with it, by their numbers. */
  readonly besides: Readonly<Record<number, number>>;
  /** The names of those that cannot be sewn in this cloth. */
  readonly unsewn: readonly string[];
  /** What has been put down by hand, and stays. */
  readonly pins: readonly Placement[];
  /** Part of the time that bettering has used; null while it rests. */
  readonly progress: number | null;
  readonly message: string | null;
}

let now: LayNow = {
  cloth: 'outer',
  lay: null,
  here: 1,
  besides: {},
  unsewn: [],
  pins: [],
  progress: null,
  message: null,
};
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
export const capsNow = async (): Promise<readonly CapToCut[]> => (await capsToCut(now)).caps;

/** Lays the chosen cloth anew round what was put down by hand; betters it for a while if wanted. */
const layAnew = async (time: number): Promise<void> => {
  stopLaying();
  const turn = latest;
  const { caps, unsewn } = await capsToCut(now);
  if (turn !== latest || caps.length === 0) return;
  const spec = useStudio.getState().good.cloths[now.cloth];
  const wish = { caps, cloth: now.cloth, spec };
  const pieces = layPieces(wish);
  const pins = now.pins.filter(({ piece }) => pieces.some(({ id }) => id === piece));
  const order: LayOrder = { task: layTask(pieces, spec, pins), seed: SEED, time };
  worker = new Worker(layWorker, { type: 'module' });
  worker.addEventListener('message', ({ data }: MessageEvent<LayAnswer>) => take(data, wish, pieces));
  worker.addEventListener('error', () =>
    take({ kind: 'failed', message: 'The pieces could not be laid: please reload the page.' }, wish, pieces),
  );
  worker.postMessage(order);
  tell({ pins, unsewn, message: null, progress: time > 0 ? 0 : null });
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

export const chooseCloth = (cloth: Cloth): void => {
  if (cloth === now.cloth) return;
  tell({ cloth, lay: null, pins: [] });
  void layAnew(0);
};

export const putCaps = (here: number): void => {
  tell({ here, pins: [] });
  void layAnew(0);
};

/** Lays so many of a cap of the shelf with the one on the table. */
export const putBeside = (id: number, count: number): void => {
  tell({ besides: { ...now.besides, [id]: count }, pins: [] });
  void layAnew(0);
};

/** Puts a piece down where a hand let it go, and lays the rest round it. */
export const pinPiece = (placement: Placement): void => {
  const pins = [...now.pins.filter(({ piece }) => piece !== placement.piece), placement];
  tell({ pins, lay: now.lay && withPlacement(now.lay, placement) });
  void layAnew(0);
};

export const freePiece = (id: string): void => {
  tell({ pins: now.pins.filter(({ piece }) => piece !== id) });
  void layAnew(0);
};

export const freeAll = (): void => {
  tell({ pins: [] });
  void layAnew(0);
};

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
  });
  return () => {
    resting.stop();
    stop();
    stopLaying();
  };
};
