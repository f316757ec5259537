import type { FieldId } from '../state/field.ts';

/** Moves the focus into a field of the stage that lies open. */
export const focusField = (field: FieldId): void => {
  const control = document.querySelector(`[data-field="${field}"]`);
  control?.closest('details')?.setAttribute('open', '');
  control?.querySelector<HTMLElement>('input, select')?.focus();
};

/** What was pressed is about to go: the focus moves to the heading that it stands under, or to that of the stage. */
export const focusHeading = (pressed: Element): void =>
  (pressed.closest('details, aside') ?? document).querySelector<HTMLElement>('summary, h2')?.focus();
