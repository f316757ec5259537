import { skull } from '../../../src/caps/skull/skull.ts';
import { of, type Picture } from '../picture.ts';

/** The skull cap as it comes and at its extremes. */
export const skullPictures: readonly Picture[] = of(skull, [
  { name: 'skull' },
  {
    name: 'skull-four-faced',
    girth: 480,
    values: { gores: 4, edge: 'facing', lining: false, frontSeam: 'panel' },
  },
  {
    name: 'skull-twelve-high',
    girth: 640,
    values: { gores: 12, ease: 40, crownRoom: 140, goreWidest: 0.5, topButton: true, allowance: 20 },
  },
]);
