import { beforeEach, expect, test, vi } from 'vitest';
import { keepIn, openStudio } from './opened.ts';

let kept: Map<string, string>;
beforeEach(() => {
  kept = new Map();
  keepIn(kept);
  vi.useFakeTimers();
});

const note = {
  date: '2026-11-25',
  style: 'flat-top',
  found: ['It is tight'],
  changed: { ease: [12.7, 20] as const },
};
const open = async () => ({ ...(await openStudio()), ...(await import('../../src/state/try-on.ts')) });

test('a change on trial lies on the table beside what was wished, and is no step of undo', async () => {
  const { tryOn, now, past } = await open();
  const before = now();
  expect(tryOn({ ease: 20 })).toBe(true);
  expect(now().good.cap.values.ease).toBe(20);
  expect(now().moving?.from).toBe(before.good);
  expect(now().wish).toBe(before.wish);
  expect(past.getState().pastStates).toHaveLength(0);
});

test('put back, the table is as it was', async () => {
  const { tryOn, putBack, now } = await open();
  const before = now();
  tryOn({ ease: 20 });
  putBack();
  expect(now().good).toBe(before.good);
  expect(now().moving).toBeNull();
});

test('what was wished since is not put back', async () => {
  const { tryOn, putBack, put, now } = await open();
  tryOn({ ease: 20 });
  put('cap.ease', 15);
  putBack();
  expect(now().good.cap.values.ease).toBe(15);
  expect(now().good).toBe(now().wish);
});

test('taken with consent it is one step of undo, and its note is kept with the head', async () => {
  const { tryOn, keepFit, undo, now, past } = await open();
  const before = now().wish;
  tryOn({ ease: 20, visorDrop: 0.6 });
  expect(keepFit({ ease: 20, visorDrop: 0.6 }, note)).toBe(true);
  expect(now().wish.cap.values).toMatchObject({ ease: 20, visorDrop: 0.6 });
  expect(now().wish.head.fittings).toEqual([note]);
  expect(past.getState().pastStates).toHaveLength(1);
  undo();
  expect(now().wish).toBe(before);
  expect(now().wish.head.fittings).toBeUndefined();
});

test('what cannot be sewn is refused', async () => {
  const { tryOn, keepFit, now } = await open();
  const before = now();
  expect(tryOn({ ease: -500 })).toBe(false);
  expect(keepFit({ ease: -500 }, note)).toBe(false);
  expect(now().wish).toBe(before.wish);
  expect(now().good).toBe(before.good);
});

test('notes survive a reload, damaged ones go without a word', async () => {
  const { keepFit } = await open();
  keepFit({ ease: 20 }, note);
  vi.advanceTimersByTime(1000);
  const text = kept.get('capwright')!;
  expect((await openStudio()).now().wish.head.fittings).toEqual([note]);
  kept.set('capwright', text.replaceAll('"date":"2026-11-25"', '"date":7'));
  const { now } = await openStudio();
  expect(now().wish.head.fittings).toEqual([]);
  expect(now().notice).toBeNull();
});
