import { goreLining } from '../parts/gore/gore-layers.ts';
import type { StyleLining } from '../style.ts';
import { bandOf, type GoredValues } from './parameters.ts';

/** Gores, and a band where there is one. */
export const goredLining: StyleLining<GoredValues> = {
  form: (values, head) => goreLining(values, head, bandOf(values)),
};
