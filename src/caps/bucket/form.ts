import type { Form } from '../form.ts';
import { brimStrips } from '../parts/brim/form.ts';
import { brimOnCrown } from '../parts/brimmed/brimmed.ts';
import { tippedHat, tippedHatStrips } from '../parts/brimmed/tipped-hat.ts';
import type { Head } from '../style.ts';
import type { BucketValues } from './parameters.ts';

/** A bucket hat in space: tip, side and upper brim. */
export const bucketForm = (values: BucketValues, head: Head): Form => {
  const { shell, opening } = tippedHat({ ...values, lining: false }, head, false);
  const { slope, places } = brimOnCrown(values, opening, shell);
  return { strips: [...tippedHatStrips(values, head), ...brimStrips(slope, places)] };
};
