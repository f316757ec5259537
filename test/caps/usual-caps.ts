import { defaultsOf, type Values } from '../../src/caps/parameter.ts';
import type { Head, Style } from '../../src/caps/style.ts';

/** The values of a style as it comes, with each other choice, and as it starts: those that can be sewn for a head. */
export const usualCaps = (style: Style, headOf: (values: Values) => Head): readonly Values[] => {
  const defaults = defaultsOf(style.parameters) as Values;
  const choices = Object.entries(style.parameters).flatMap(([key, row]) =>
    row.kind === 'choice' ? row.options.map(({ value }) => ({ [key]: value })) : [],
  );
  return [{}, ...choices, ...style.starts.map(({ values }) => values as Values)]
    .map((some) => ({ ...defaults, ...some }))
    .filter((values) => style.problems(values, headOf(values)).length === 0);
};
