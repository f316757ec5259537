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

test('ticks go with a cap that was removed, once it cannot be brought back', async () => {
  const { tick, now } = await open();
  const { takeToTable, removeFromShelf } = await import('../../src/state/shelf.ts');
  const { undo } = await import('../../src/state/actions.ts');
  const { capId } = now();
  const there = () => now().shelf.find(({ id }) => id === capId)!;
  tick('cut', true);
  await takeToTable(now().shelf[0]!);
  removeFromShelf(there());
  undo();
  expect(there()).toBeDefined();
  expect(now().ticks[capId]).toEqual(['cut']);
  removeFromShelf(there());
  vi.advanceTimersByTime(1000);
  expect((await open()).now().ticks[capId]).toBeUndefined();
});
