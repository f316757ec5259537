import { ovalOfGirth } from '../../geometry/oval.ts';
import { openingOf } from '../opening.ts';
import { liningGirth } from '../parts/girth-figures.ts';
import { asLining, UNLINED } from '../parts/lining/as-lining.ts';
import type { StyleLining } from '../style.ts';
import { crownOnBand } from './form.ts';
import type { FlatTopValues } from './parameters.ts';

/** Tip, side band and band. */
export const flatTopLining: StyleLining<FlatTopValues> = {
  form: (values, head) => {
    if (!values.lining) return UNLINED;
    const opening = openingOf(head, values.ease);
    const shellCrown = opening.shell + values.crownFullness;
    const { girth } = liningGirth(opening, 'Crown girth', shellCrown, values.liningTake);
    // It is never gathered.
    const own = { ...values, sideBandHeight: values.sideBandHeight - values.liningTake, crownGather: 0 };
    return asLining(crownOnBand(own, ovalOfGirth(girth, values.tipRatio), opening.lining));
  },
};
