import { scrub } from '../../../src/caps/scrub/scrub.ts';
import { of, type Picture } from '../picture.ts';

/** The scrub cap as it comes, with ties, and at its extremes. */
export const scrubPictures: readonly Picture[] = of(scrub, [
  { name: 'scrub' },
  { name: 'scrub-with-ties', values: { backTie: 'ties' } },
  { name: 'scrub-halves-with-dimensions', options: { halves: true, dimensions: true } },
  {
    name: 'scrub-small',
    girth: 480,
    values: { ease: 0, crownHeight: 94, stripWidth: 80, casingHeight: 12, elasticLength: 90, allowance: 3 },
  },
  {
    name: 'scrub-large',
    girth: 640,
    values: {
      ease: 40,
      crownHeight: 140,
      stripWidth: 150,
      backTie: 'ties',
      casingHeight: 50,
      tieWidth: 25,
      tieLength: 400,
      allowance: 20,
    },
  },
]);
