import type { ParameterValue, Values } from '../caps/parameter.ts';
import { cardOf, withCard, withNote } from '../design/head-cards.ts';
import type { FitNote, Spec } from '../design/spec.ts';
import type { Problem } from '../pattern/problem.ts';
import { settle, wishing } from './actions.ts';
import { canBeSewn, judged } from './derived.ts';
import { useStudio } from './studio.ts';

/**
 * Lays a change of values on the table beside what was wished, without wishing it: no step of undo. False where it
 * cannot be sewn. `putBack` or `keepFit` ends it; so does any other wish.
 */
export const tryOn = (values: Partial<Values>): boolean => {
  settle();
  const trial = changed(useStudio.getState().wish, values);
  if (!canBeSewn(trial)) return false;
  useStudio.setState({ trial });
  return true;
};

/**
 * Takes a change of values and the note of the fitting as one wish: one step of undo. The note goes on the head's card, so
 * that the next cap starts right. False where it cannot be sewn.
 */
export const keepFit = (values: Readonly<Record<string, ParameterValue>>, note: FitNote): boolean => {
  settle();
  const next = changed(useStudio.getState().wish, values);
  if (!canBeSewn(next)) return false;
  const wish = { ...next, head: withNote(next.head, note) };
  const { heads } = useStudio.getState();
  const card = cardOf(heads, wish.head);
  // The card keeps its own measures; a head without one gets its card now.
  useStudio.setState({ ...wishing(wish), heads: withCard(heads, card ? withNote(card, note) : wish.head) });
  return true;
};

/** What stands first in the way of a wish with some values changed; null where that can be sewn. */
export const inTheWayOf = (wish: Spec, values: Partial<Values>): Problem | null =>
  judged(changed(wish, values)).problems[0] ?? null;

const changed = (wish: Spec, values: Partial<Values>): Spec => ({
  ...wish,
  cap: { ...wish.cap, values: { ...wish.cap.values, ...(values as Values) } },
});
