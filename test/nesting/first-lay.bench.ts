import { bench, describe } from 'vitest';
import { improving, type Progress } from '../../src/nesting/improve.ts';
import { randomFrom } from '../../src/nesting/random.ts';
import type { Task } from '../../src/nesting/task.ts';
import { timing } from '../house/processor-time.ts';
import { capPieces } from './cap-pieces.ts';

/** A first lay of any number of pieces as caps have them; each call with other outlines, so that nothing is remembered. */
const random = randomFrom(1);
const first = (count: number): Progress => {
  const task: Task = {
    ground: { kind: 'strip', width: 1400, length: null },
    pieces: capPieces(count, 1 + 0.05 * random()),
    spacing: 2,
    edgeSpacing: 10,
    pinned: [],
  };
  return improving(task, 1).next().value;
};

for (const count of [10, 20, 50, 100, 300]) {
  describe(`first lay of ${count} pieces`, () => {
    bench(
      'ours',
      () => {
        first(count);
      },
      count > 20 ? { ...timing, warmupTime: 0, warmupIterations: 0, iterations: 3, time: 0 } : timing,
    );
  });
}
