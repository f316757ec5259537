import { openingOf } from '../opening.ts';
import { asLining, UNLINED } from '../parts/lining/as-lining.ts';
import type { StyleLining } from '../style.ts';
import { beretStrips } from './form.ts';
import { beretMeasures, liningMeasures } from './measures.ts';
import type { BeretValues } from './parameters.ts';

/** A crown as the shell has it, and a band. */
export const beretLining: StyleLining<BeretValues> = {
  form: (values, head) => {
    if (!values.lining) return UNLINED;
    const { lining } = openingOf(head, values.ease);
    const measures = liningMeasures(beretMeasures(values, head), values.liningTake, lining);
    return asLining(beretStrips(values, measures));
  },
};
