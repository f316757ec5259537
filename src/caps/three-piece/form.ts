import type { Form } from '../form.ts';
import { openingOf } from '../opening.ts';
import { topAndSidesStrips } from '../parts/top-and-sides/form.ts';
import { visorStrips } from '../parts/visor/form.ts';
import { visorParts } from '../parts/visor/visor-parts.ts';
import type { Head } from '../style.ts';
import { capOpening, crownShape } from './crown.ts';
import type { ThreePieceValues } from './parameters.ts';

/** A three-piece flat cap in space: top, sides and visor. */
export const threePieceForm = (values: ThreePieceValues, head: Head): Form => {
  const opening = capOpening(values, head);
  const round = { ...head, girth: openingOf(head, values.ease).shell };
  return {
    strips: [
      ...visorStrips(values, visorParts(values, round), round, opening.oval.halfLength),
      ...topAndSidesStrips(crownShape(values, opening), opening),
    ],
  };
};
