import type { Form } from '../form.ts';
import { topAndSidesStrips } from '../parts/top-and-sides/form.ts';
import type { Head } from '../style.ts';
import { scrubOpening, scrubShape } from './crown.ts';
import type { ScrubValues } from './parameters.ts';

/** A scrub cap in space, before it is drawn in behind: strip and sides. */
export const scrubForm = (values: ScrubValues, head: Head): Form => {
  const opening = scrubOpening(values, head);
  return { strips: topAndSidesStrips(scrubShape(values, opening), opening) };
};
