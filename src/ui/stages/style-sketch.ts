import type { Form } from '../../caps/form.ts';
import { defaultsOf, type Values } from '../../caps/parameter.ts';
import type { Head, Style } from '../../caps/style.ts';
import { valuesFor } from '../../design/decode.ts';

/** The form that a style would have with the values on the table; with its own defaults where those cannot be sewn. */
export const styleSketch = (style: Style, values: Values, head: Head): Form => {
  const taken = valuesFor(style.parameters, values);
  return style.form(style.problems(taken, head).length === 0 ? taken : defaultsOf(style.parameters), head);
};
