import type { Values } from '../caps/parameter.ts';
import { MOST_NOTES } from './decode-head.ts';
import type { FitNote, HeadSpec } from './spec.ts';

/** The card of the head with this name. */
export const cardOf = (cards: readonly HeadSpec[], { name }: HeadSpec): HeadSpec | undefined =>
  cards.find((card) => card.name.trim() === name.trim());

/** The cards with this head on its own: in the place of the card of the same name, or after the others. */
export const withCard = (cards: readonly HeadSpec[], head: HeadSpec): readonly HeadSpec[] => {
  const before = cardOf(cards, head);
  return before ? cards.map((card) => (card === before ? head : card)) : [...cards, head];
};

/** A head that remembers one fitting more. */
export const withNote = (head: HeadSpec, note: FitNote): HeadSpec => ({
  ...head,
  fittings: [...(head.fittings ?? []), note].slice(-MOST_NOTES),
});

/** What fitted this head last, by the names of the parameter tables: a row that two styles have means the same in both. */
export const fittedValues = ({ fittings = [] }: HeadSpec): Values =>
  Object.fromEntries(
    fittings.flatMap(({ changed }) => Object.entries(changed).map(([key, [, after]]) => [key, after])),
  );
