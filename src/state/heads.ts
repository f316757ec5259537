import { freeName, nameFollowing } from '../design/cap-name.ts';
import { cardOf, withCard } from '../design/head-cards.ts';
import type { HeadSpec } from '../design/spec.ts';
import { settle, wishing } from './actions.ts';
import { savedName } from './shelved.ts';
import { useStudio } from './studio.ts';

const get = useStudio.getState;

/** Keeps the head on the table as a card, in the place of the card of the same name. */
export const keepHead = (): void => {
  settle();
  const { heads, wish } = get();
  useStudio.setState({ heads: withCard(heads, wish.head) });
};

/** Measures the cap on the table for the head of a card. */
export const takeHead = (head: HeadSpec): void => {
  settle();
  const { wish } = get();
  if (wish.head === head) return;
  const cap = { ...wish.cap, name: nameOn(head) };
  useStudio.setState({ ...wishing({ ...wish, head, cap }), typed: withoutHead() });
};

/** What the cap on the table is called on another head: a name that was never given has the first number that is free there. */
const nameOn = ({ name }: HeadSpec): string => {
  const { wish, shelf } = get();
  const follows = nameFollowing(wish.cap.name, wish.head.name, name);
  return follows === wish.cap.name ? follows : freeName(follows.replace(/ \d+$/, ''), shelf.map(savedName));
};

export const removeHead = (head: HeadSpec): void => {
  settle();
  const { heads } = get();
  const card = cardOf(heads, head);
  useStudio.setState({ heads: heads.filter((one) => one !== card) });
};

/** Adds cards; one whose name is there already is left out. Gives how many were added. */
export const addHeads = (cards: readonly HeadSpec[]): number => {
  settle();
  const { heads } = get();
  const added = cards.filter((card, i) => !cardOf([...heads, ...cards.slice(0, i)], card));
  if (added.length > 0) useStudio.setState({ heads: [...heads, ...added] });
  return added.length;
};

/** Sets all readings of the head at once: what a hat size stands for. */
export const putGirth = (mm: number): void => {
  settle();
  const { wish } = get();
  useStudio.setState(wishing({ ...wish, head: { ...wish.head, readings: [mm] } }));
};

/** What was typed of another head says nothing of this one. */
const withoutHead = () =>
  Object.fromEntries(Object.entries(get().typed).filter(([field]) => !field.startsWith('head.')));
