import { LARGEST } from '../units.ts';

/** What has been parsed but not been looked at yet. */
export type Data = Readonly<Record<string, unknown>>;

/** In letters; a name that is typed or made is no longer. */
export const LONGEST_NAME = 120;

export const isData = (value: unknown): value is Data =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
export const isNumber = (value: unknown): value is number =>
  typeof value === 'number' && Math.abs(value) <= LARGEST;
export const isBoolean = (value: unknown): value is boolean => typeof value === 'boolean';
export const isNumberOrNull = (value: unknown): value is number | null => value === null || isNumber(value);
export const isName = (value: unknown): value is string =>
  typeof value === 'string' && value.length <= LONGEST_NAME;
export const isOneOf =
  <T extends string>(...options: readonly T[]) =>
  (value: unknown): value is T =>
    options.some((option) => option === value);
export const isRow =
  (most: number, least = 0) =>
  (value: unknown): value is readonly number[] =>
    Array.isArray(value) && value.length >= least && value.length <= most && value.every(isNumber);

export interface Reader {
  /** The value under a key if it passes, else the fallback, with the repair noted. */
  take<T>(key: string, passes: (value: unknown) => value is T, fallback: T): T;
}

/** Reads one record. A record that is missing altogether is one repair, not one for each of its fields. */
export const reader = (data: unknown, path: string, repaired: string[]): Reader => {
  const whole = isData(data);
  if (!whole) repaired.push(path);
  return {
    take: (key, passes, fallback) => {
      const value = whole ? data[key] : undefined;
      if (passes(value)) return value;
      if (whole) repaired.push(path === '' ? key : `${path}.${key}`);
      return fallback;
    },
  };
};
