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

/** A file adds no more than fill the cards up to this. */
export const MOST_HEADS = 200;

/** Adds cards, as many as there is room for; one whose name is there already is left out. Gives how many were added, and how many found no room. */
export const addHeads = (cards: readonly HeadSpec[]): { readonly added: number; readonly left: number } => {
  settle();
  const { heads } = get();
  const names = new Set(heads.map(knownBy));
  const unknown = cards.filter((card) => {
    const isNew = !names.has(knownBy(card));
    names.add(knownBy(card));
    return isNew;
  });
  const added = unknown.slice(0, Math.max(0, MOST_HEADS - heads.length));
  if (added.length > 0) useStudio.setState({ heads: [...heads, ...added] });
  return { added: added.length, left: unknown.length - added.length };
};

/** What a card is known by. */
const knownBy = ({ name }: HeadSpec): string => name.trim();

/** Sets all readings of the head at once: what a hat size stands for. */
export const putGirth = (mm: number): void => {
  settle();
  const { wish } = get();
  useStudio.setState(wishing({ ...wish, head: { ...wish.head, readings: [mm] } }));
};

/** What was typed of another head says nothing of this one. */
const withoutHead = () =>
  Object.fromEntries(Object.entries(get().typed).filter(([field]) => !field.startsWith('head.')));
