import { defaultsOf, rowsOf, type Values } from '../caps/parameter.ts';
import type { Head, Style } from '../caps/style.ts';
import { fieldOf } from '../caps/validate.ts';
import { valuesThatFit } from './decode.ts';

/** As many values as may stand in each other's way before the style's own are the better start. */
const MENDED = 8;

/**
 * The values of a cap for another style: what both have is kept, but for what was never touched, which takes the other
 * style's own usual value. What cannot be sewn so takes the nearest value that can, or else all usual values.
 */
export const valuesFor = (style: Style, before: Values, from: Style | null, head: Head | null): Values => {
  const untouched = from === null ? {} : defaultsOf(from.parameters);
  const touched = Object.fromEntries(
    Object.entries(before).filter(([key, value]) => !(key in untouched) || !sameAs(value, untouched[key])),
  );
  const wished: Values = {
    ...touched,
    ...defaultsOf(style.parameters),
    ...valuesThatFit(style.parameters, touched),
  };
  if (head === null) return wished;
  return mended(style, wished, head) ?? { ...touched, ...defaultsOf(style.parameters) };
};

const sameAs = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

/** Null where value after value stands in the way. */
const mended = (style: Style, wished: Values, head: Head): Values | null => {
  let values = wished;
  for (let i = 0; i < MENDED; i++) {
    const problems = style.problems(rowsOf(style.parameters, values), head);
    if (problems.length === 0) return values;
    const { field, nearest } = problems[0]!;
    const key = Object.keys(style.parameters).find((one) => fieldOf(one) === field);
    if (key === undefined || nearest === undefined) return null;
    values = { ...values, [key]: nearest };
  }
  return null;
};
