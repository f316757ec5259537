import type { ParameterValue } from '../../caps/parameter.ts';
import { forgetTyped, put, settle, type as takeTyped } from '../../state/actions.ts';
import { atRestIn } from '../../state/dragged.ts';
import type { FieldId } from '../../state/field.ts';
import { useStudio } from '../../state/studio.ts';
import { stillStands } from '../../state/typed.ts';
import type { Notation } from './notation.ts';

/** What an emptied field means: nothing (its value comes back), null at once, or null once the field is left. */
export type WhenEmpty = 'keeps' | 'clears' | 'clears when left';

export interface TypedField {
  readonly text: string;
  readonly onInput: (text: string) => void;
  readonly onLeave: () => void;
}

/**
 * A field that keeps what was typed, word for word, beside the value it was understood as. While the value is dragged the field
 * stays as it was: what is shown in its place follows the hand.
 */
export const useTyped = (field: FieldId, notation: Notation, empty: WhenEmpty): TypedField => {
  const value = useStudio((s) => atRestIn(s, field));
  const unit = useStudio((s) => s.wish.unit);
  const typed = useStudio((s) => s.typed[field]);
  const stands = stillStands(typed, value, unit);
  const text = stands ? typed.text : value === null ? '' : notation.write(value, unit);

  const onInput = (next: string): void => {
    if (next.trim() === '') {
      takeTyped(field, next, empty === 'clears' ? emptyOf(value) : undefined);
      return;
    }
    const now = notation.read(next, unit);
    takeTyped(field, next, now.ok ? now.value : undefined);
  };

  const onLeave = (): void => {
    settle();
    if (!stands || text.trim() !== '') return;
    if (empty === 'clears when left') put(field, null);
    forgetTyped(field);
  };

  return { text, onInput, onLeave };
};

const emptyOf = (value: ParameterValue): ParameterValue => (Array.isArray(value) ? [] : null);
