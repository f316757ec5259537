import { defaultsOf } from '../caps/parameter.ts';
import { styleOf } from '../caps/registry.ts';
import { freeName, nameForWearer } from './cap-name.ts';
import { valuesThatFit } from './decode.ts';
import { fittedValues } from './head-cards.ts';
import type { HeadSpec, Spec } from './spec.ts';

/** A cap to begin with, in the style and the cloth of another: usual values, but for what fitted this head before. */
export const newCap = (from: Spec, head: HeadSpec, names: readonly string[]): Spec => {
  const { style } = from.cap;
  const { parameters } = styleOf(style);
  const values = { ...defaultsOf(parameters), ...valuesThatFit(parameters, fittedValues(head)) };
  return {
    ...from,
    head,
    cap: { style, name: freeName(nameForWearer(head.name.trim()), names), values },
  };
};
