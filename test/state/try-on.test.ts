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
const open = async () => {
  const studio = await openStudio();
  const { shownIn } = await import('../../src/state/shown.ts');
  return {
    ...studio,
    ...(await import('../../src/state/try-on.ts')),
    shown: () => shownIn(studio.now()),
  };
};

test('a change on trial is shown beside what was wished, and is no step of undo', async () => {
  const { tryOn, now, past, shown } = await open();
  const before = now();
  expect(tryOn({ ease: 20 })).toBe(true);
  expect(shown().cap.values.ease).toBe(20);
  expect(now()).toMatchObject({ wish: before.wish, good: before.good, moving: null });
  expect(past.getState().pastStates).toHaveLength(0);
});

test('put back, the table is as it was', async () => {
  const { tryOn, putBack, now, shown } = await open();
  const { good } = now();
  tryOn({ ease: 20 });
  putBack();
  expect(shown()).toBe(good);
});

test('what is wished since ends the trial', async () => {
  const { tryOn, put, putUnit, now, shown } = await open();
  tryOn({ ease: 20 });
  put('cap.ease', 15);
  expect(shown()).toBe(now().wish);
  tryOn({ ease: 20 });
  putUnit('in');
  expect(now().trial).toBeNull();
  expect(now().good.cap.values.ease).toBe(15);
});

test('a trial gets into no step: what is taken back is what was wished, and that is printed', async () => {
  const { tryOn, put, undo, redo, now, shown } = await open();
  put('cap.ease', 25);
  const { wish } = now();
  tryOn({ ease: 31 });
  put('cap.name', 'Sunday cap');
  undo();
  expect(now()).toMatchObject({ wish, good: wish });
  expect(shown()).toBe(wish);
  tryOn({ ease: 31 });
  redo();
  expect(shown()).toBe(now().wish);
  expect(now().wish.cap.name).toBe('Sunday cap');
});

test('undo while something is tried on puts that back, and takes no step', async () => {
  const { tryOn, put, undo, now, shown } = await open();
  put('cap.ease', 25);
  const { wish } = now();
  tryOn({ ease: 31 });
  undo();
  expect(shown()).toBe(wish);
  undo();
  expect(now().wish.cap.values.ease).toBe(12.7);
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

test('the note goes on the card of the head, which keeps its own measures', async () => {
  const { keepFit, put, now } = await open();
  const measuredBefore = now().heads[0]!;
  expect(measuredBefore.name).toBe(now().wish.head.name);
  put('head.girth', 560);
  expect(keepFit({ ease: 20 }, note)).toBe(true);
  expect(now().wish.head).toMatchObject({ readings: [560], fittings: [note] });
  expect(now().heads[0]).toEqual({ ...measuredBefore, fittings: [note] });
});

test('a head without a card gets its card with the note', async () => {
  const { keepFit, put, now } = await open();
  const { heads } = now();
  put('head.name', 'Flugelhorn');
  keepFit({ ease: 20 }, note);
  expect(now().heads).toEqual([...heads, now().wish.head]);
  expect(now().heads.at(-1)).toMatchObject({ name: 'Flugelhorn', fittings: [note] });
});

test('what cannot be sewn is refused', async () => {
  const { tryOn, keepFit, now } = await open();
  const before = now();
  expect(tryOn({ ease: -500 })).toBe(false);
  expect(keepFit({ ease: -500 }, note)).toBe(false);
  expect(now().wish).toBe(before.wish);
  expect(now().good).toBe(before.good);
});

test('what stands in the way of a change is named: the crown that is wished, until the change mends it', async () => {
  const { inTheWayOf, put, now } = await open();
  expect(inTheWayOf(now().wish, { ease: 20 })).toBeNull();
  put('cap.crownFullness', 999);
  expect(inTheWayOf(now().wish, { ease: 20 })?.field).toBe('cap.crownFullness');
  expect(inTheWayOf(now().wish, { crownFullness: 60 })).toBeNull();
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
