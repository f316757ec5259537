import type { Form } from '../../caps/form.ts';
import { rowsOf } from '../../caps/parameter.ts';
import { fetchStyle, type StyleId, styleOf } from '../../caps/registry.ts';
import type { Head, Style } from '../../caps/style.ts';
import { valuesFor } from '../../design/change-style.ts';
import { judge } from '../../design/draft.ts';
import type { CapSpec, Spec } from '../../design/spec.ts';
import { type FormPicture, formPicture } from '../../drawing/form-picture.ts';

/** A cap to be sketched as it is, or as it would be in each of some styles. */
export interface SketchOrder {
  readonly spec: Spec;
  readonly styles?: readonly StyleId[] | undefined;
}

/** A sketch for each style asked for, in that order; none where the cap cannot be sewn. Their rules are fetched first. */
export const sketched = async ({ spec, styles }: SketchOrder): Promise<readonly FormPicture[]> => {
  const own = await fetchStyle(spec.cap.style);
  const wanted = styles ? await Promise.all(styles.map(fetchStyle)) : [own];
  const { given } = judge(spec);
  return given === null ? [] : wanted.map((style) => formPicture(formIn(style, spec.cap, given.head)));
};

/** The form that a cap would have in a style with what it can keep of its values. */
const formIn = (style: Style, cap: CapSpec, head: Head): Form => {
  const values = style.id === cap.style ? cap.values : valuesFor(style, cap.values, styleOf(cap.style), head);
  return style.form(rowsOf(style.parameters, values), head);
};
