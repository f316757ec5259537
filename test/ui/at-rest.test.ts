import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { atRest } from '../../src/ui/at-rest.ts';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

describe('what is handed on at rest', () => {
  it('is the first value at once, and then the last of a row of them, once', () => {
    const seen: number[] = [];
    const { push } = atRest((n: number) => seen.push(n), 250);
    push(1);
    expect(seen).toEqual([1]);
    for (const n of [2, 3, 4]) {
      push(n);
      vi.advanceTimersByTime(240);
    }
    expect(seen).toEqual([1]);
    vi.advanceTimersByTime(10);
    expect(seen).toEqual([1, 4]);
  });

  it('is nothing any more once it was stopped', () => {
    const seen: number[] = [];
    const { push, stop } = atRest((n: number) => seen.push(n), 250);
    push(1);
    push(2);
    stop();
    vi.advanceTimersByTime(1000);
    expect(seen).toEqual([1]);
  });
});
