import { improving } from '../nesting/improve.ts';
import type { Layout } from '../nesting/layout.ts';
import type { LayAnswer, LayOrder } from './lay-messages.ts';

/** A better lay is told this often at most, ms: each is drawn, and a hand may be at work on the page. */
const TELL = 200;

/**
 * What is answered to an order: the first lay at once, then better ones and how far it has come, last the best. `clock`
 * tells ms. Throws a RangeError where the task makes no sense.
 */
export function* layAnswers({ task, seed, time }: LayOrder, clock: () => number): Generator<LayAnswer> {
  const search = improving(task, seed);
  const start = clock();
  let last: Layout | null = null;
  let told = Number.NEGATIVE_INFINITY;
  for (;;) {
    const { value, done: ended = false } = search.next();
    const gone = clock() - start;
    const over = ended || gone >= time;
    if (over || gone - told >= TELL) {
      if (value.layout !== last) yield { kind: 'layout', layout: value.layout };
      if (!over) yield { kind: 'progress', done: gone / time };
      last = value.layout;
      told = gone;
    }
    if (over) return;
  }
}
