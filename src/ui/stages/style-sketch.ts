import type { Form } from '../../caps/form.ts';
import { defaultsOf, rowsOf } from '../../caps/parameter.ts';
import { styleOf } from '../../caps/registry.ts';
import type { Head, Style } from '../../caps/style.ts';
import { valuesFor } from '../../design/change-style.ts';
import type { CapSpec } from '../../design/spec.ts';

/** The form that a style would have with the values on the table; with its own defaults where those cannot be sewn. */
export const styleSketch = (style: Style, cap: CapSpec, head: Head): Form => {
  const taken = style.id === cap.style ? cap.values : valuesFor(style, cap.values, styleOf(cap.style), head);
  const values = rowsOf(style.parameters, taken);
  return style.form(style.problems(values, head).length === 0 ? values : defaultsOf(style.parameters), head);
};
