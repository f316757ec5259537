import { UNLINED } from '../parts/lining/as-lining.ts';
import { narrowingLining } from '../parts/tipped-crown/narrowing-layers.ts';
import type { StyleLining } from '../style.ts';
import type { PillboxValues } from './parameters.ts';
import { ratioOf } from './ratio.ts';

/** Tip and side. */
export const pillboxLining: StyleLining<PillboxValues> = {
  form: (values, head) =>
    values.lining ? narrowingLining({ values, head, ratio: ratioOf(values, head) }) : UNLINED,
};
