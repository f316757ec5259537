import { pillbox } from '../../../src/caps/pillbox/pillbox.ts';
import { of, type Picture } from '../picture.ts';

/** The pillbox as it comes, round and in pieces, and at its extremes. */
export const pillboxPictures: readonly Picture[] = of(pillbox, [
  { name: 'pillbox' },
  { name: 'pillbox-halves-on-the-fold', options: { halves: true }, values: { crownTaper: 26 } },
  {
    name: 'pillbox-inches-with-dimensions',
    options: { unit: 'in', dimensions: true, label: null },
    values: { tipShape: 'round', sideBandPieces: '2', crownBody: 'interlining' },
  },
  {
    name: 'pillbox-low-and-small',
    girth: 480,
    values: {
      ease: 0,
      sideBandHeight: 30,
      sweatbandHeight: 30,
      crownTaper: 40,
      sideBandPieces: '4',
      lining: false,
      allowance: 3,
    },
  },
  {
    name: 'pillbox-tall-and-large',
    girth: 640,
    values: { ease: 40, sideBandHeight: 110, crownTaper: 120, allowance: 15 },
  },
]);
