import { gored } from '../../../src/caps/gored/gored.ts';
import { of, type Picture } from '../picture.ts';

/** The gored cap as it comes and at its extremes. */
export const goredPictures: readonly Picture[] = of(gored, [
  { name: 'gored' },
  { name: 'gored-halves-on-the-fold', options: { halves: true } },
  { name: 'gored-inches-with-dimensions', options: { unit: 'in', dimensions: true, label: null } },
  {
    name: 'gored-five-with-a-sweatband',
    values: {
      gores: 5,
      frontSeam: 'panel',
      goreFullness: 20,
      crownRoom: 24,
      goreWidest: 0.2,
      edge: 'sweatband',
    },
  },
  {
    name: 'gored-twelve-full-and-large',
    girth: 640,
    values: {
      gores: 12,
      ease: 40,
      goreFullness: 290,
      crownRoom: 140,
      goreWidest: 0.4,
      bandHeight: 20,
      strap: true,
      strapWidth: 12,
      allowance: 20,
      topButtonDiameter: 35,
    },
  },
  {
    name: 'gored-four-close-and-small',
    girth: 480,
    values: {
      gores: 4,
      ease: 0,
      goreFullness: 0,
      crownRoom: 0,
      goreWidest: 0.1,
      edge: 'sweatband',
      visorSource: 'none',
      lining: false,
      topButtonDiameter: 10,
      allowance: 3,
    },
  },
  {
    name: 'gored-for-a-bought-insert',
    values: { visorSource: 'insert', edge: 'sweatband', goreFullness: 0, crownRoom: 20, goreWidest: 0.15 },
  },
]);
