import type { ParameterValue, Values } from '../caps/parameter.ts';
import { cardOf, withCard, withNote } from '../design/head-cards.ts';
import type { FitNote, Spec } from '../design/spec.ts';
import { settle } from './actions.ts';
import { canBeSewn } from './derived.ts';
import type { FieldId } from './field.ts';
import { useStudio } from './studio.ts';

/** What lies on the table on trial, and what lay there before. */
let trial: { readonly tried: Spec; readonly before: Spec } | null = null;

/**
 * Lays a change of values on the table beside what was wished, without wishing it: no step of undo. False where it
 * cannot be sewn. `putBack` or `keepFit` ends it; so does any other wish.
 */
export const tryOn = (values: Partial<Values>): boolean => {
  putBack();
  settle();
  const { wish, good } = useStudio.getState();
  const tried = changed(wish, values);
  if (tried === null) return false;
  trial = { tried, before: good };
  const [first = 'ease'] = Object.keys(values);
  const field: FieldId = `cap.${first}`;
  useStudio.setState({ good: tried, moving: { field, wished: wish, from: good } });
  return true;
};

/** The table as it was before the trial. Where something else was wished since, that stays. */
export const putBack = (): void => {
  if (trial !== null && useStudio.getState().good === trial.tried) {
    useStudio.setState({ good: trial.before, moving: null });
  }
  trial = null;
};

/**
 * Takes a change of values and the note of the fitting as one wish: one step of undo. The note goes on the head's card, so
 * that the next cap starts right. False where it cannot be sewn.
 */
export const keepFit = (values: Readonly<Record<string, ParameterValue>>, note: FitNote): boolean => {
  putBack();
  settle();
  const next = changed(useStudio.getState().wish, values);
  if (next === null) return false;
  const wish = { ...next, head: withNote(next.head, note) };
  const { heads } = useStudio.getState();
  const card = cardOf(heads, wish.head);
  // The card keeps its own measures; a head without one gets its card now.
  useStudio.setState({ wish, good: wish, heads: withCard(heads, card ? withNote(card, note) : wish.head) });
  return true;
};

/** A wish with some values changed; null where that cannot be sewn. */
const changed = (wish: Spec, values: Partial<Values>): Spec | null => {
  const cap = { ...wish.cap, values: { ...wish.cap.values, ...(values as Values) } };
  const next = { ...wish, cap };
  return !canBeSewn(next) ? null : next;
};
