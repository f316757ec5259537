import { type ClothLay, clothLay, withPlacement } from '../../cloth/cloth-lay.ts';
import type { LayAnswer, LayOrder } from '../../cloth/lay-messages.ts';
import { type LayPiece, layPieces } from '../../cloth/lay-pieces.ts';
import { layTask } from '../../cloth/lay-task.ts';
import type { LayCap, LayWish } from '../../cloth/lay-wish.ts';
import type { Placement } from '../../nesting/task.ts';
import type { Cloth } from '../../pattern/piece.ts';
import { derived } from '../../state/derived.ts';
import { useStudio } from '../../state/studio.ts';

/** The cutting lay on the table. */
export interface LayNow {
  readonly cloth: Cloth;
  /** Null until the first answer is there. */
  readonly lay: ClothLay | null;
  /** How many caps are laid together. */
  readonly caps: number;
  /** What has been put down by hand, and stays. */
  readonly pins: readonly Placement[];
  /** Part of the time that bettering has used; null while it rests. */
  readonly progress: number | null;
  readonly message: string | null;
}

let now: LayNow = { cloth: 'outer', lay: null, caps: 1, pins: [], progress: null, message: null };
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

/** Stops bettering and keeps the best so far. */
export const stopLaying = (): void => {
  worker?.terminate();
  worker = null;
  if (now.progress !== null) tell({ progress: null });
};

/** What is cut together of a cloth now: the cap on the table, as many times as wished. Nothing while it cannot be sewn. */
export const capsNow = (): readonly LayCap[] => {
  const { good } = useStudio.getState();
  const { draft } = derived(good);
  return draft === null ? [] : [{ name: good.cap.name, cutting: draft.cutting, count: now.caps }];
};

/** Lays the chosen cloth anew round what was put down by hand; betters it for a while if wanted. */
const layAnew = (time: number): void => {
  stopLaying();
  const caps = capsNow();
  if (caps.length === 0) return;
  const spec = useStudio.getState().good.cloths[now.cloth];
  const wish = { caps, cloth: now.cloth, spec };
  const pieces = layPieces(wish);
  const pins = now.pins.filter(({ piece }) => pieces.some(({ id }) => id === piece));
  const order: LayOrder = { task: layTask(pieces, spec, pins), seed: SEED, time };
  worker = new Worker(new URL('../../cloth/lay.worker.ts', import.meta.url), { type: 'module' });
  worker.addEventListener('message', ({ data }: MessageEvent<LayAnswer>) => take(data, wish, pieces));
  worker.addEventListener('error', () =>
    take({ kind: 'failed', message: 'The pieces could not be laid: please reload the page.' }, wish, pieces),
  );
  worker.postMessage(order);
  tell({ pins, message: null, progress: time > 0 ? 0 : null });
};

const take = (answer: LayAnswer, wish: LayWish, pieces: readonly LayPiece[]): void => {
  if (answer.kind === 'layout') {
    tell({ lay: clothLay(wish, pieces, answer.layout) });
  } else if (answer.kind === 'progress') {
    tell({ progress: answer.done });
  } else {
    stopLaying();
    if (answer.kind === 'failed') tell({ message: answer.message });
  }
};

export const betterLay = (): void => layAnew(TIME);

export const chooseCloth = (cloth: Cloth): void => {
  if (cloth === now.cloth) return;
  tell({ cloth, lay: null, pins: [] });
  layAnew(0);
};

export const putCaps = (caps: number): void => {
  tell({ caps, pins: [] });
  layAnew(0);
};

/** Puts a piece down where a hand let it go, and lays the rest round it. */
export const pinPiece = (placement: Placement): void => {
  const pins = [...now.pins.filter(({ piece }) => piece !== placement.piece), placement];
  tell({ pins, lay: now.lay && withPlacement(now.lay, placement) });
  layAnew(0);
};

export const freePiece = (id: string): void => {
  tell({ pins: now.pins.filter(({ piece }) => piece !== id) });
  layAnew(0);
};

export const freeAll = (): void => {
  tell({ pins: [] });
  layAnew(0);
};

/** Cloth is laid once the hand has rested this long, ms. */
const REST = 300;

/** Lays again whenever cap or cloth have changed and rest, for as long as the Cloth stage is open. Returns how to stop. */
export const keepLay = (): (() => void) => {
  let timer: ReturnType<typeof setTimeout> | undefined;
  layAnew(0);
  const stop = useStudio.subscribe((state, before) => {
    if (state.good === before.good && !(state.moving === null && before.moving !== null)) return;
    clearTimeout(timer);
    if (state.moving === null || state.good !== before.good) timer = setTimeout(() => layAnew(0), REST);
  });
  return () => {
    clearTimeout(timer);
    stop();
    stopLaying();
  };
};
