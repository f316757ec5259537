import type { Values } from '../caps/parameter.ts';
import { cardOf, fittedValues } from './head-cards.ts';
import type { HeadSpec } from './spec.ts';

/** Those of some values that are what fitted another head, where this one has not been fitted: each with that head's card. */
export const fittedElsewhere = (
  cards: readonly HeadSpec[],
  head: HeadSpec,
  values: Values,
): Readonly<Record<string, HeadSpec>> => {
  const own = fittedValues(head);
  const others = cards.filter((card) => card !== cardOf(cards, head));
  return Object.fromEntries(
    others.flatMap((card) =>
      Object.entries(fittedValues(card))
        .filter(([key, value]) => own[key] === undefined && values[key] === value)
        .map(([key]) => [key, card]),
    ),
  );
};
