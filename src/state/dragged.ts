import { type FieldId, readField } from './field.ts';
import type { Studio } from './state.ts';
import { stillStands } from './typed.ts';

/** Whether a field is moved by its slider, be it with keys: what is typed is no drag, and is shown as it was typed. */
export const isDragged = ({ moving, typed, wish }: Studio, field: FieldId): boolean =>
  moving?.field === field && !stillStands(typed[field], readField(wish, field), wish.unit);

/** The value of a field; while it is dragged, the one that it had before. */
export const atRestIn = (studio: Studio, field: FieldId) =>
  readField(studio.moving !== null && isDragged(studio, field) ? studio.moving.wished : studio.wish, field);
