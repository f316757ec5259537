import { goreLining } from '../parts/gore/gore-layers.ts';
import type { StyleLining } from '../style.ts';
import type { SkullValues } from './parameters.ts';

/** Gores. */
export const skullLining: StyleLining<SkullValues> = { form: (values, head) => goreLining(values, head, 0) };
