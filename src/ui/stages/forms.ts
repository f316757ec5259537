import { goTo, open } from '../../state/actions.ts';
import type { FieldId } from '../../state/field.ts';
import { type Stage, stages } from '../../state/stage.ts';
import { part } from '../Fetched.tsx';
import { focusField } from '../focus.ts';

/** The stages that a first visit does not open. */
export const laterForms = {
  head: part(() => import('./HeadStage.tsx').then((m) => m.HeadStage)),
  cloth: part(() => import('./ClothStage.tsx').then((m) => m.ClothStage)),
  paper: part(() => import('./PaperStage.tsx').then((m) => m.PaperStage)),
  sewing: part(() => import('./SewingStage.tsx').then((m) => m.SewingStage)),
};

/** Fetches a stage's form ahead of its being opened. */
export const fetchForm = (stage: Stage): Promise<void> =>
  stage === 'cap' ? Promise.resolve() : laterForms[stage].fetch();

export const fetchForms = (): void => {
  for (const form of Object.values(laterForms)) void form.fetch();
};

/** Goes to a stage once its form is there, so that the ticket is never blank. */
export const walkTo = async (stage: Stage): Promise<void> => {
  if (stage !== 'cap') await fetchForm(stage);
  // On a phone what lies open covers the ticket.
  if (matchMedia('(width < 48rem)').matches) open(null);
  goTo(stage);
};

/** Goes to where a field is asked for, and into the field. */
export const walkToField = async (field: FieldId): Promise<void> => {
  const stage = stages.find((one) => field.startsWith(`${one}.`));
  if (stage) await walkTo(stage);
  requestAnimationFrame(() => focusField(field));
};
