import type { Form } from '../form.ts';
import { brimStrips } from '../parts/brim/form.ts';
import { jointsAside } from '../parts/brim/sections.ts';
import { brimRatio } from '../parts/brimmed/brim-ratio.ts';
import { brimOnCrown } from '../parts/brimmed/brimmed.ts';
import { narrowingLayers, narrowingStrips } from '../parts/tipped-crown/narrowing-layers.ts';
import type { Head } from '../style.ts';
import type { BucketValues } from './parameters.ts';

/** A bucket hat in space: tip, side and upper brim. */
export const bucketForm = (values: BucketValues, head: Head): Form => {
  const ratio = brimRatio(values, head);
  const seamsBelow = jointsAside(values);
  const { shell, opening } = narrowingLayers({
    values: { ...values, lining: false },
    head,
    ratio,
    seamsBelow,
  });
  const { slope, places } = brimOnCrown(values, opening, shell);
  return { strips: [...narrowingStrips(values, head, ratio), ...brimStrips(slope, places)] };
};
