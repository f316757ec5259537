import { type ClothLay, clothLay } from '../../cloth/cloth-lay.ts';
import layWorker from '../../cloth/lay.worker.ts?beside';
import type { LayAnswer, LayOrder } from '../../cloth/lay-messages.ts';
import { layPieces } from '../../cloth/lay-pieces.ts';
import { layTask } from '../../cloth/lay-task.ts';
import type { LayWish } from '../../cloth/lay-wish.ts';
import { pinsThatLie } from '../../cloth/pins-that-lie.ts';
import type { Layout } from '../../nesting/layout.ts';
import type { Placement, Task } from '../../nesting/task.ts';

/** Gives the first lay of a cloth, round what was put down by hand. One is asked for at a time. */
export type Lay = (wish: LayWish, put?: readonly Placement[]) => Promise<ClothLay>;

/** Lays cloth after cloth in a worker for as long as some work takes. Rejected with the signal's reason where it is stopped, and where a cloth cannot be laid. */
export const layingBeside = async <T>(signal: AbortSignal, work: (lay: Lay) => Promise<T>): Promise<T> => {
  signal.throwIfAborted();
  const worker = new Worker(layWorker, { type: 'module' });
  try {
    return await work(async (wish, put = []) => {
      const pieces = layPieces(wish);
      const task = layTask(pieces, wish.spec, pinsThatLie(put, pieces, wish.spec));
      return clothLay(wish, pieces, await firstLayout(worker, task, signal));
    });
  } finally {
    worker.terminate();
  }
};

/** What a worker answers at once; given no time to better it, it has nothing more to say. */
const firstLayout = (worker: Worker, task: Task, signal: AbortSignal): Promise<Layout> =>
  new Promise((resolve, reject) => {
    signal.throwIfAborted();
    signal.addEventListener('abort', () => reject(signal.reason), { once: true });
    // Each order has the worker to itself: these take the place of those before.
    worker.onerror = ({ message }) =>
      reject(new Error(message || 'the worker that lays could not be loaded'));
    worker.onmessage = ({ data }: MessageEvent<LayAnswer>) => {
      if (data.kind === 'layout') resolve(data.layout);
      if (data.kind === 'failed') reject(new Error(data.message));
    };
    const order: LayOrder = { task, seed: 1, time: 0 };
    worker.postMessage(order);
  });
