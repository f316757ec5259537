import { awaitInFrame, notInFrame, paintInFrame } from './frames.ts';

/** What a maker is asked for, and what becomes of it. */
export interface Making<Order, Made> {
  /** What there is to make now; null where there is nothing. */
  readonly order: () => Order | null;
  /** Shows what was made, in the frame in which all that waits is painted. */
  readonly show: (made: Made, order: Order) => void;
  readonly failed: () => void;
}

export interface Maker {
  /** Says that there is something to make. */
  readonly ask: () => void;
  readonly close: () => void;
}

/** Something shown that a worker makes beside the page, one order at a time: what changes meanwhile is the next. */
export const openMaker = <Order, Made>(
  worker: Worker,
  { order, show, failed }: Making<Order, Made>,
): Maker => {
  let at: { readonly order: Order; made?: Made } | null = null;
  let [stale, known] = [false, false];
  let here = () => {};

  const ask = (): void => {
    stale = true;
    if (at !== null) return;
    const next = order();
    if (next === null) return;
    at = { order: next };
    stale = false;
    // The first waits for the worker to be fetched, and nothing waits for that.
    if (known) here = awaitInFrame();
    worker.postMessage(next);
  };
  const showNow = (): void => {
    if (at?.made === undefined) return;
    const { made, order: done } = at;
    at = null;
    show(made, done);
    if (stale) ask();
  };
  worker.addEventListener('message', ({ data }: MessageEvent<Made>) => {
    if (at === null) return;
    at.made = data;
    known = true;
    paintInFrame(showNow);
    here();
  });
  worker.addEventListener('error', () => {
    here();
    failed();
  });
  const close = (): void => {
    here();
    notInFrame(showNow);
    worker.terminate();
  };
  return { ask, close };
};
