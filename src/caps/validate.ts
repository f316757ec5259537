import type { Problem } from '../pattern/problem.ts';
import { count, mm, type Quantity, radians, ratio, words } from '../words.ts';
import type { Parameter, ParameterTable, ParameterValue } from './parameter.ts';

/** The field name of a parameter, as problems name it. */
export const fieldOf = (key: string): string => `cap.${key}`;

/** What in a set of values lies outside its table: each with the nearest value inside. */
export const checkValues = (
  table: ParameterTable,
  values: Readonly<Record<string, ParameterValue>>,
): readonly Problem[] => Object.entries(table).flatMap(([key, p]) => checkValue(key, p, values[key]));

const checkValue = (
  key: string,
  parameter: Parameter,
  value: ParameterValue | undefined,
): readonly Problem[] => {
  const field = fieldOf(key);
  switch (parameter.kind) {
    case 'length':
      return typeof value === 'number'
        ? inRange(field, parameter, value, mm)
        : [wrong(field, parameter.default)];
    case 'angle':
      return typeof value === 'number'
        ? inRange(field, parameter, value, radians)
        : [wrong(field, parameter.default)];
    case 'ratio':
      return typeof value === 'number'
        ? inRange(field, parameter, value, ratio)
        : [wrong(field, parameter.default)];
    case 'count':
      return typeof value === 'number' && Number.isInteger(value)
        ? inRange(field, parameter, value, count)
        : [wrong(field, parameter.default)];
    case 'following':
      if (value === null) return [];
      return typeof value === 'number' ? inRange(field, parameter, value, mm) : [wrong(field)];
    case 'choice':
      return parameter.options.some((option) => option.value === value) ? [] : [wrong(field)];
    case 'switch':
      return typeof value === 'boolean' ? [] : [wrong(field)];
    case 'row':
      return checkRow(field, parameter, value);
  }
};

const wrong = (field: string, nearest?: number): Problem => ({
  field,
  message: words`This needs a value.`,
  ...(nearest === undefined ? {} : { nearest }),
});

const inRange = (
  field: string,
  { label, min, max }: { readonly label: string; readonly min: number; readonly max: number },
  value: number,
  quantity: (n: number) => Quantity,
): readonly Problem[] => {
  if (value >= min && value <= max) return [];
  const nearest = value > max ? max : min;
  return [{ field, message: words`${label} goes from ${quantity(min)} to ${quantity(max)}.`, nearest }];
};

const checkRow = (
  field: string,
  { min, max, most }: { readonly min: number; readonly max: number; readonly most: number },
  value: ParameterValue | undefined,
): readonly Problem[] => {
  if (!Array.isArray(value)) return [wrong(field)];
  if (value.length > most) return [{ field, message: words`At most ${String(most)} widths, please.` }];
  if (value.every((w) => w >= min && w <= max)) return [];
  return [{ field, message: words`Each width goes from ${mm(min)} to ${mm(max)}.` }];
};
