import { openingOf } from '../opening.ts';
import { asLining, UNLINED } from '../parts/lining/as-lining.ts';
import { topAndSidesStrips } from '../parts/top-and-sides/form.ts';
import type { StyleLining } from '../style.ts';
import { crownShape, liningOpening, liningWish } from './crown.ts';
import type { ThreePieceValues } from './parameters.ts';

/** Top and sides. */
export const threePieceLining: StyleLining<ThreePieceValues> = {
  form: (values, head) => {
    if (!values.lining) return UNLINED;
    const opening = liningOpening(values, head);
    const shape = crownShape(liningWish(values, openingOf(head, values.ease)), opening);
    return asLining(topAndSidesStrips(shape, opening));
  },
};
