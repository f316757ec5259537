import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { RunnerTask, Vitest } from 'vitest/node';
import type { Reporter } from 'vitest/reporters';
import type { Group } from './units.ts';

export const UNIT_TIMES = join(import.meta.dirname, '../../test-results/bench.json');

/** Keeps every single time of every benchmark, so that any percentile can be read from them. */
export default function unitTimes(): Reporter {
  let run: Vitest;
  return {
    onInit: (vitest) => {
      run = vitest;
    },
    onTestRunEnd: () => {
      const groups = run.state.getFiles().flatMap((file) => groupsIn(file));
      mkdirSync(dirname(UNIT_TIMES), { recursive: true });
      writeFileSync(UNIT_TIMES, JSON.stringify(groups));
    },
  };
}

const groupsIn = (task: RunnerTask): Group[] => {
  if (!('tasks' in task)) return [];
  const benchmarks = task.tasks.flatMap(({ name, meta, result }) =>
    meta.benchmark && result?.benchmark ? [{ name, samples: result.benchmark.samples }] : [],
  );
  return [
    ...(benchmarks.length > 0 ? [{ name: task.name, benchmarks }] : []),
    ...task.tasks.flatMap(groupsIn),
  ];
};
