import type { ParameterValue } from '../caps/parameter.ts';
import type { Unit } from '../units.ts';
import { sameValue } from './field.ts';

/** What someone typed into a field, word for word, with the value the field had once it was typed. */
export interface Typed {
  readonly text: string;
  readonly value: ParameterValue;
  readonly unit: Unit;
  /** False where the text could not be read: then the value is still the one from before. */
  readonly understood: boolean;
}

/**
 * Does the typed text still say what the field holds? It does until the value is changed in another way, or the unit
 * is switched; a text that could not be read waits, whatever the unit, to be put right.
 */
export const stillStands = (typed: Typed | undefined, value: ParameterValue, unit: Unit): typed is Typed =>
  typed !== undefined && sameValue(typed.value, value) && (typed.unit === unit || !typed.understood);

const LONGEST_TEXT = 200;

/** Reads kept texts back, leaving out whatever is damaged. */
export const decodeTyped = (data: unknown): Readonly<Record<string, Typed>> => {
  if (typeof data !== 'object' || data === null) return {};
  return Object.fromEntries(
    Object.entries(data).filter((entry): entry is [string, Typed] => isTyped(entry[1])),
  );
};

const isTyped = (data: unknown): data is Typed => {
  if (typeof data !== 'object' || data === null) return false;
  const { text, value, unit, understood } = data as Partial<Record<keyof Typed, unknown>>;
  return (
    typeof text === 'string' &&
    text.length <= LONGEST_TEXT &&
    isValue(value) &&
    (unit === 'cm' || unit === 'in') &&
    typeof understood === 'boolean'
  );
};

const isValue = (value: unknown): boolean =>
  value === null ||
  ['number', 'string', 'boolean'].includes(typeof value) ||
  (Array.isArray(value) && value.every((n) => typeof n === 'number'));
