import { ovalOfGirth } from '../../geometry/oval.ts';
import { openingOf } from '../opening.ts';
import { brimRatio } from '../parts/brimmed/brim-ratio.ts';
import { liningReach } from '../parts/gore/gore-layers.ts';
import { asLining, UNLINED } from '../parts/lining/as-lining.ts';
import { narrowingLining } from '../parts/tipped-crown/narrowing-layers.ts';
import type { StyleLining } from '../style.ts';
import { goresOn } from './form.ts';
import type { SunHatValues } from './parameters.ts';

/** Gores, or tip and side, as the shell has them. */
export const sunHatLining: StyleLining<SunHatValues> = {
  form: (values, head) => {
    if (!values.lining) return UNLINED;
    const ratio = brimRatio(values, head);
    if (values.crown !== 'gored') return narrowingLining({ values, head, ratio });
    const oval = ovalOfGirth(openingOf(head, values.ease).lining, ratio);
    return asLining(goresOn(oval, values, liningReach(values, head, 0)));
  },
};
