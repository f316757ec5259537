import { describe, expect, test } from 'vitest';
import { layAnswers } from '../../src/cloth/lay-answers.ts';
import { improving } from '../../src/nesting/improve.ts';
import { randomFrom } from '../../src/nesting/random.ts';
import type { Task } from '../../src/nesting/task.ts';
import { rectangle } from '../nesting/random-outlines.ts';
import { randomPieces } from '../nesting/random-tasks.ts';

const task: Task = {
  ground: { kind: 'strip', width: 150, length: null },
  pieces: randomPieces(randomFrom(5), 100),
  spacing: 2,
  edgeSpacing: 5,
  pinned: [],
};

/** All answers where each look at the clock finds so many ms gone. */
const answersIn = (time: number, tick: number, of = task) => {
  let now = 0;
  return [...layAnswers({ task: of, seed: 1, time }, () => (now += tick))];
};
const lengths = (answers: ReturnType<typeof answersIn>) =>
  answers.flatMap((answer) => (answer.kind === 'layout' ? [answer.layout.length!] : []));

describe('what the laying worker says', { timeout: 60_000 }, () => {
  test('is the first lay alone where no time is given', () => {
    expect(answersIn(0, 10).map(({ kind }) => kind)).toEqual(['layout']);
  });

  test('begins with the first lay, and ends with the best that the time has brought', () => {
    const [tick, time] = [60, 2400];
    const told = lengths(answersIn(time, tick));
    const search = improving(task, 1);
    const found = Array.from({ length: time / tick }, () => search.next().value.layout.length!);
    expect(told[0]).toBe(found[0]);
    expect(told.at(-1)).toBe(found.at(-1));
    expect(told.at(-1)).toBeLessThan(told[0]!);
    expect(told).toEqual(told.toSorted((a, b) => b - a));
  });

  test('comes no oftener than five times a second, with how far it is', () => {
    const progress = answersIn(800, 40).flatMap((one) => (one.kind === 'progress' ? [one.done] : []));
    expect(progress.length).toBeGreaterThan(2);
    expect(progress).toEqual(progress.toSorted((a, b) => a - b));
    expect(progress.slice(1).every((done, k) => done - progress[k]! > 0.249)).toBe(true);
    expect(progress.every((done) => done >= 0 && done < 1)).toBe(true);
  });

  test('ends before its time where nothing can be better', () => {
    const pieces = ['a', 'b'].map((id) => ({ id, polygon: rectangle(50, 50), rotations: [0] }));
    const answers = answersIn(1e6, 1, {
      ...task,
      pieces,
      spacing: 0,
      edgeSpacing: 0,
      ground: { kind: 'strip', width: 100, length: null },
    });
    expect(lengths(answers).at(-1)).toBeCloseTo(50, 1);
    expect(answers.length).toBeLessThan(10);
  });
});
