import { brimRatio } from '../parts/brimmed/brim-ratio.ts';
import { UNLINED } from '../parts/lining/as-lining.ts';
import { narrowingLining } from '../parts/tipped-crown/narrowing-layers.ts';
import type { StyleLining } from '../style.ts';
import type { BucketValues } from './parameters.ts';

/** Tip and side; the inner of two hats is as large as the outer. */
export const bucketLining: StyleLining<BucketValues> = {
  form: (values, head) =>
    values.lining || values.reversible
      ? narrowingLining({ values, head, ratio: brimRatio(values, head), twice: values.reversible })
      : UNLINED,
};
