import type { Form } from '../form.ts';
import { topButtonStrips } from '../parts/button/form.ts';
import { goreCopies, goreHeight, goreStrips } from '../parts/gore/form.ts';
import { shellReach } from '../parts/gore/gore-layers.ts';
import type { Head } from '../style.ts';
import type { SkullValues } from './parameters.ts';

/** A skull cap in space: gores, and a button where there is one. */
export const skullForm = (values: SkullValues, head: Head): Form => {
  const crown = { ...values, reach: shellReach(values, head, 0) };
  return {
    strips: [
      ...goreStrips(crown, goreCopies(values.gores), 0),
      ...topButtonStrips(values, goreHeight(crown.reach)),
    ],
  };
};
