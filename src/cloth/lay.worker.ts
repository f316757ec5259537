import { floorOf } from '../nesting/floor.ts';
import { lay, orders } from '../nesting/lay.ts';
import type { Layout } from '../nesting/layout.ts';
import { layoutOf } from '../nesting/layout-of.ts';
import { planOf } from '../nesting/plan.ts';
import type { Task } from '../nesting/task.ts';
import type { LayAnswer, LayOrder } from './lay-messages.ts';

self.addEventListener('message', ({ data }: MessageEvent<LayOrder>) => {
  try {
    for (const layout of first(data.task)) say({ kind: 'layout', layout });
    say({ kind: 'finished' });
  } catch (error) {
    say({ kind: 'failed', message: error instanceof Error ? error.message : String(error) });
  }
});

const say = (answer: LayAnswer): void => self.postMessage(answer);

function* first(task: Task): Generator<Layout> {
  const plan = planOf(task);
  let best: Layout | null = null;
  for (const order of orders(floorOf(plan))) {
    const floor = floorOf(plan);
    lay(floor, order);
    const found = layoutOf(floor);
    if (
      best !== null &&
      !(found.unplaced.length < best.unplaced.length || (found.length ?? 0) < (best.length ?? 0))
    )
      continue;
    best = found;
    yield found;
  }
}
