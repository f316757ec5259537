import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { onceResting } from '../../src/state/resting.ts';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => {
  vi.restoreAllMocks();
  vi.useRealTimers();
});

describe('what is done once the hand rests', () => {
  it('is done once, a whole wait after the last of many moves', () => {
    const act = vi.fn();
    const { soon } = onceResting(act);
    for (let i = 0; i < 40; i++) {
      soon(300);
      vi.advanceTimersByTime(16);
    }
    vi.advanceTimersByTime(300 - 16 - 1);
    expect(act).not.toHaveBeenCalled();
    vi.advanceTimersByTime(1);
    expect(act).toHaveBeenCalledTimes(1);
    vi.advanceTimersByTime(5000);
    expect(act).toHaveBeenCalledTimes(1);
  });

  it('sets no clock anew while one runs that goes off in time', () => {
    const set = vi.spyOn(globalThis, 'setTimeout');
    const { soon } = onceResting(() => {});
    for (let i = 0; i < 10; i++) {
      soon(300);
      vi.advanceTimersByTime(16);
    }
    expect(set).toHaveBeenCalledTimes(1);
  });

  it('comes sooner where a shorter wait is asked for', () => {
    const act = vi.fn();
    const { soon } = onceResting(act);
    soon(900);
    soon(300);
    vi.advanceTimersByTime(300);
    expect(act).toHaveBeenCalledTimes(1);
    vi.advanceTimersByTime(5000);
    expect(act).toHaveBeenCalledTimes(1);
  });

  it('can be asked for again once it was done, and is left undone once it was stopped', () => {
    const act = vi.fn();
    const { soon, stop } = onceResting(act);
    soon(300);
    vi.advanceTimersByTime(300);
    soon(300);
    stop();
    vi.advanceTimersByTime(5000);
    expect(act).toHaveBeenCalledTimes(1);
    soon(300);
    vi.advanceTimersByTime(300);
    expect(act).toHaveBeenCalledTimes(2);
  });
});
