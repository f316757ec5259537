import type { Form } from '../form.ts';
import { topButtonStrips } from '../parts/button/form.ts';
import { goreHeight, goreStrips } from '../parts/gore/form.ts';
import { shellReach } from '../parts/gore/gore-layers.ts';
import type { Head } from '../style.ts';
import type { SkullValues } from './parameters.ts';

/** A skull cap in space: gores, and a button where there is one. */
export const skullForm = (values: SkullValues, head: Head): Form => {
  const crown = { ...values, reach: shellReach(values, head, 0) };
  const copies = Array.from({ length: values.gores }, (_, copy) => ({ piece: 'gore', copy }));
  return {
    strips: [...goreStrips(crown, copies, 0), ...topButtonStrips(values, goreHeight(crown.reach))],
  };
};
