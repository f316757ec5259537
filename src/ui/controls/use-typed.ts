import type { ParameterValue } from '../../caps/parameter.ts';
import { forgetTyped, put, settle, type as takeTyped } from '../../state/actions.ts';
import { type FieldId, readField } from '../../state/field.ts';
import { useStudio } from '../../state/studio.ts';
import { stillStands } from '../../state/typed.ts';
import { useRested } from '../use-rested.ts';
import type { Notation } from './notation.ts';

/** What an emptied field means: nothing (its value comes back), null at once, or null once the field is left. */
export type WhenEmpty = 'keeps' | 'clears' | 'clears when left';

export interface TypedField {
  readonly value: ParameterValue;
  readonly text: string;
  /** Why the text cannot be read, once the typing has rested; null while it can. */
  readonly message: string | null;
  readonly onInput: (text: string) => void;
  readonly onLeave: () => void;
}

/** How long typing rests before it is told that it cannot be read, ms. */
const REST = 600;

/** A field that keeps what was typed, word for word, beside the value it was understood as. */
export const useTyped = (field: FieldId, notation: Notation, empty: WhenEmpty): TypedField => {
  const value = useStudio((s) => readField(s.wish, field));
  const unit = useStudio((s) => s.wish.unit);
  const typed = useStudio((s) => s.typed[field]);
  const stands = stillStands(typed, value, unit);
  const text = stands ? typed.text : value === null ? '' : notation.write(value, unit);
  const read = stands && text.trim() !== '' ? notation.read(text, unit) : null;
  const message = read && !read.ok ? read.message : null;
  const rested = useRested(message, REST);

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

  return { value, text, message: message === null ? null : rested, onInput, onLeave };
};

const emptyOf = (value: ParameterValue): ParameterValue => (Array.isArray(value) ? [] : null);
