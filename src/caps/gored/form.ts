import type { Form } from '../form.ts';
import { openingOf } from '../opening.ts';
import { bandStrip } from '../parts/band/form.ts';
import { topButtonStrips } from '../parts/button/form.ts';
import { goreCopies, goreFront, goreHeight, goreLowerEdge, goreStrips } from '../parts/gore/form.ts';
import { shellReach } from '../parts/gore/gore-layers.ts';
import { visorStrips } from '../parts/visor/form.ts';
import { visorParts } from '../parts/visor/visor-parts.ts';
import type { Head } from '../style.ts';
import { bandOf, type GoredValues } from './parameters.ts';

/** A gored cap in space: gores and button, band where there is one, visor. */
export const goredForm = (values: GoredValues, head: Head): Form => {
  const opening = { ...head, girth: openingOf(head, values.ease).shell };
  const band = bandOf(values);
  const crown = { ...values, reach: shellReach(values, head, band) };
  return {
    strips: [
      ...goreStrips(crown, goreCopies(values.gores), band),
      ...topButtonStrips(values, band + goreHeight(crown.reach)),
      ...(band > 0 ? [bandStrip(goreLowerEdge(crown), band)] : []),
      ...visorStrips(values, visorParts(values, opening), opening, goreFront(crown.reach)),
    ],
  };
};
