import { beforeEach, expect, it, vi } from 'vitest';
import { keepIn, openStudio } from './opened.ts';

let kept: Map<string, string>;
beforeEach(() => {
  kept = new Map();
  keepIn(kept);
  vi.useFakeTimers();
});

const open = async () => ({ ...(await openStudio()), ...(await import('../../src/state/heads.ts')) });

it('a head is kept as a card under its name, in the place of the card of that name', async () => {
  const { now, put, keepHead } = await open();
  const names = now().heads.map(({ name }) => name);
  put('head.girth', 560);
  keepHead();
  expect(now().heads.map(({ name }) => name)).toEqual(names);
  expect(now().heads[0]!.readings).toEqual([560]);
  put('head.name', 'Flugelhorn');
  keepHead();
  expect(now().heads.map(({ name }) => name)).toEqual([...names, 'Flugelhorn']);
});

it('the head of a card is measured for the cap on the table, as one step of undo', async () => {
  const { now, takeHead, undo, type } = await open();
  type('head.girth', 'abou', undefined);
  const { wish, heads } = now();
  takeHead(heads[2]!);
  expect(now().wish.head).toBe(heads[2]);
  expect(now().good.head).toBe(heads[2]);
  // The demo has a cap of that head already.
  expect(now().wish.cap.name).toBe(`${heads[2]!.name}’s cap 2`);
  expect(now().typed).toEqual({});
  undo();
  expect(now().wish).toBe(wish);
});

it('cards survive a reload; a damaged one goes alone; a removed one comes back by undo', async () => {
  const { now, put, keepHead, removeHead, undo } = await open();
  put('head.breadth', 150);
  keepHead();
  const { heads } = now();
  removeHead(heads[1]!);
  expect(now().heads).toHaveLength(heads.length - 1);
  undo();
  expect(now().heads).toBe(heads);
  vi.advanceTimersByTime(1000);
  const data = JSON.parse(kept.get('capwright')!);
  data.state.heads[1].readings = 'wide';
  kept.set('capwright', JSON.stringify(data));
  expect((await open()).now().heads).toEqual(heads.filter((_, i) => i !== 1));
});

it('a copy of one head’s cap taken up for another head is that one’s first, or its next', async () => {
  const { now, takeHead } = await open();
  const { copyCap } = await import('../../src/state/shelf.ts');
  const card = (name: string) => now().heads.find((one) => one.name === name)!;
  copyCap();
  expect(now().wish.cap.name).toBe('Cornet’s cap 2');
  // The demo has a hat of the drum’s, but no cap.
  takeHead(card('Bass drum'));
  expect(now().wish.cap.name).toBe('Bass drum’s cap');
  takeHead(card('Euphonium'));
  expect(now().wish.cap.name).toBe('Euphonium’s cap 2');
});

it('a file of very many heads fills the cards and no more, each name once', async () => {
  const { now, addHeads, MOST_HEADS } = await open();
  const [first] = now().heads;
  const there = now().heads.length;
  const band = Array.from({ length: 6000 }, (_, i) => ({ ...first!, name: `Horn ${i}` }));
  expect(addHeads([first!, band[0]!, { ...band[0]!, name: ' Horn 0 ' }])).toEqual({ added: 1, left: 0 });
  expect(addHeads(band)).toEqual({ added: MOST_HEADS - there - 1, left: 6000 - MOST_HEADS + there });
  expect(now().heads).toHaveLength(MOST_HEADS);
  expect(new Set(now().heads.map(({ name }) => name)).size).toBe(MOST_HEADS);
});
