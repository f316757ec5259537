import { type FieldId, readField } from '../../state/field.ts';
import { useStudio } from '../../state/studio.ts';
import { stillStands } from '../../state/typed.ts';
import { useRested } from '../use-rested.ts';
import type { Notation } from './notation.ts';

/** How long typing rests before it is told that it cannot be read, ms. */
const REST = 600;

/** Why the text of a field cannot be read, once the typing has rested; null while it can. */
export const useUnread = (field: FieldId, notation: Notation): string | null => {
  const message = useStudio(({ typed: { [field]: typed }, wish }) => {
    if (!stillStands(typed, readField(wish, field), wish.unit) || typed.text.trim() === '') return null;
    const read = notation.read(typed.text, wish.unit);
    return read.ok ? null : read.message;
  });
  const rested = useRested(message, REST);
  return message === null ? null : rested;
};
