import { improving } from '../nesting/improve.ts';
import type { Layout } from '../nesting/layout.ts';
import type { LayAnswer, LayOrder } from './lay-messages.ts';

/** Lays pieces off the page's own thread: an answer at once, then better ones for as long as was asked. */
self.addEventListener('message', ({ data }: MessageEvent<LayOrder>) => {
  try {
    answer(data);
    say({ kind: 'finished' });
  } catch (error) {
    say({ kind: 'failed', message: error instanceof Error ? error.message : String(error) });
  }
});

const say = (answer: LayAnswer): void => self.postMessage(answer);

const answer = ({ task, seed, time }: LayOrder): void => {
  const start = performance.now();
  let last: Layout | null = null;
  let told = 0;
  for (const { layout } of improving(task, seed)) {
    if (layout !== last) say({ kind: 'layout', layout });
    last = layout;
    const done = performance.now() - start;
    if (done >= time) return;
    if (done - told > TELL) {
      told = done;
      say({ kind: 'progress', done: done / time });
    }
  }
};

/** Progress is told this often, ms. */
const TELL = 200;
