import type { SheetSet } from '../../print/sheet.ts';
import { onceResting } from '../../state/resting.ts';
import type { Studio } from '../../state/state.ts';
import { useStudio } from '../../state/studio.ts';
import { today } from '../today.ts';
import type { FromSheets, ToSheets } from './sheets.worker.ts';
import address from './sheets.worker.ts?beside';

/** The sheets of what lies on the table. */
export interface SheetsNow {
  readonly set: SheetSet | null;
  /** They are of what lay there before. */
  readonly stale: boolean;
  /** Why no others come; null while they are laid out. */
  readonly message: string | null;
}

let now: SheetsNow = { set: null, stale: true, message: null };
const listeners = new Set<() => void>();

const tell = (next: SheetsNow): void => {
  now = next;
  for (const listener of listeners) listener();
};

export const sheetsNow = (): SheetsNow => now;
export const onSheets = (listener: () => void): (() => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};

/** Sheets are laid out once the hand has rested this long, ms: never while a slider moves. */
const REST = 300;
/** The same while a field is still held: a slider may only have paused, and a typed figure need not be left first. */
const PAUSE = 900;

let worker: Worker | null = null;
/** Which laying out is the latest: what comes of an earlier one is out of date. */
let latest = 0;

/** Lays the sheets out again whenever what they show has changed and rests. Returns how to stop. */
export const keepSheets = (): (() => void) => {
  const resting = onceResting(layOut);
  const soon = (wait: number) => {
    latest += 1;
    resting.soon(wait);
    if (!now.stale || now.message !== null) tell({ ...now, stale: true, message: null });
  };
  const stop = useStudio.subscribe((state, before) => {
    const held = state.moving !== null;
    const letGo = !held && before.moving !== null;
    if (changes(state, before) || (now.stale && letGo)) soon(held ? PAUSE : REST);
  });
  soon(REST);
  return () => {
    resting.stop();
    stop();
    close();
  };
};

const changes = (state: Studio, before: Studio): boolean =>
  state.good !== before.good ||
  state.wish.paper !== before.wish.paper ||
  // The picture on the first sheet is drawn once the sheets are looked at.
  (state.stage === 'paper' && before.stage !== 'paper') ||
  state.wish.unit !== before.wish.unit;

/** The paper as wished, on the last cap that can be sewn. */
const layOut = (): void => {
  const { good, wish, stage } = useStudio.getState();
  const { paper, unit } = wish;
  const order = { spec: good, paper, unit, date: today(), pictured: stage === 'paper' };
  worker ??= open();
  worker.postMessage({ turn: latest, order } satisfies ToSheets);
};

const open = (): Worker => {
  const opened = new Worker(address, { type: 'module' });
  opened.addEventListener('message', ({ data: { turn, set } }: MessageEvent<FromSheets>) => {
    // A paper that cannot be printed on has its problem beside it; the last sheets stay.
    if (turn === latest && set !== null) tell({ set, stale: false, message: null });
  });
  // Perhaps the next one can be had.
  opened.addEventListener('error', () => {
    close();
    tell({ ...now, message: 'The sheets could not be laid out: please reload the page.' });
  });
  return opened;
};

const close = (): void => {
  worker?.terminate();
  worker = null;
};
