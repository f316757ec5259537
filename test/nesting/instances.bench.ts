import { writeSync } from 'node:fs';
import { bench, describe } from 'vitest';
import { improving } from '../../src/nesting/improve.ts';
import { faultsOf } from './checker.ts';
import { INSTANCES, type Instance, instanceOf, ownLength, taskOf } from './instances.ts';

/** How long each set is worked at, s; a short look is `NESTING_SECONDS=10`. */
const SECONDS = Number(process.env.NESTING_SECONDS ?? 60);
const MARKS = [1, 10, 60].filter((mark) => mark <= SECONDS);
/** The bench asks more than once. */
const done = new Set<string>();
const found = new Map(MARKS.map((mark) => [mark, [] as number[]]));

/** Density as a part of the best published, %. */
const ofBest = (instance: Instance, length: number): number => {
  const density = instance.totalArea / (ownLength(instance, length) * instance.stripWidth);
  return (100 * density) / instance.best.density;
};

/** Printed at once: the sets take minutes. */
const say = (line: string): void => {
  writeSync(2, `${line}\n`);
};

const percent = (part: number): string => part.toFixed(1).padStart(5);

const run = (name: string): void => {
  if (done.has(name)) return;
  done.add(name);
  const instance = instanceOf(name);
  const task = taskOf(instance);
  const start = performance.now();
  const search = improving(task, 1);
  let { layout } = search.next().value;
  const firstTook = performance.now() - start;
  const passed: number[] = [];
  for (;;) {
    const { value, done: ended } = search.next();
    layout = value.layout;
    const seconds = (performance.now() - start) / 1000;
    while (passed.length < MARKS.length && (seconds >= MARKS[passed.length]! || ended === true))
      passed.push(ofBest(instance, layout.length!));
    if (ended === true || seconds >= SECONDS) break;
  }
  for (const [k, part] of passed.entries()) found.get(MARKS[k]!)!.push(part);
  const faults = faultsOf(task, layout);
  const density = percent(ofBest(instance, layout.length!) * instance.best.density);
  say(
    `${name.padEnd(9)} first lay ${firstTook.toFixed(0).padStart(4)} ms; ` +
      MARKS.map((mark, k) => `${mark} s ${percent(passed[k]!)} %`).join(', ') +
      ` of the best; density ${density} %; ${faults.length === 0 ? 'sound' : faults.join(', ')}`,
  );
  if (faults.length > 0) throw new Error(faults.join(', '));
};

describe('public test sets', () => {
  for (const name of INSTANCES) {
    bench(name, () => run(name), { iterations: 1, time: 0, warmupIterations: 0, warmupTime: 0 });
  }

  bench(
    'mean of all',
    () => {
      if (done.has('mean')) return;
      done.add('mean');
      const means = [...found].map(([mark, parts]) => {
        const mean = parts.reduce((sum, part) => sum + part, 0) / parts.length;
        return `${mark} s ${percent(mean)} %, least ${percent(Math.min(...parts))} %`;
      });
      say(`mean of ${found.get(MARKS[0]!)!.length}: ${means.join('; ')}`);
    },
    { iterations: 1, time: 0, warmupIterations: 0, warmupTime: 0 },
  );
});
