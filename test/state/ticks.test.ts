import { beforeEach, expect, test, vi } from 'vitest';
import { keepIn, openStudio } from './opened.ts';

beforeEach(() => {
  keepIn(new Map());
  vi.useFakeTimers();
});

const open = async () => ({ ...(await openStudio()), ...(await import('../../src/state/ticks.ts')) });

test('ticks survive a reload and are no steps of undo', async () => {
  const { tick, past } = await open();
  tick('cut', true);
  tick('crown', true);
  tick('cut', false);
  expect(past.getState().pastStates).toHaveLength(0);
  vi.advanceTimersByTime(1000);
  const { ticksNow, now } = await open();
  expect(ticksNow(now())).toEqual(['crown']);
});
