import { sunHat } from '../../../src/caps/sun-hat/sun-hat.ts';
import { clothsOf } from '../../guide/caps.ts';
import { of, type Picture } from '../picture.ts';

/** The sun hat as it comes, with either crown, each way its brim can be cut, and at its extremes. */
export const sunHatPictures: readonly Picture[] = of(sunHat, [
  { name: 'sun-hat' },
  { name: 'sun-hat-with-rows', rowsFor: clothsOf({}) },
  { name: 'sun-hat-halves-on-the-fold', options: { halves: true } },
  {
    name: 'sun-hat-inches-with-dimensions',
    options: { unit: 'in', dimensions: true, label: null },
    values: { crown: 'tipped', brimPieces: '3' },
  },
  {
    name: 'sun-hat-five-gores-brim-in-quarters',
    values: { gores: 5, frontSeam: 'panel', brimPieces: '4', brimBody: 'stiffener' },
  },
  { name: 'sun-hat-halves-meeting-in-front', values: { brimHalves: 'centre', brimUnder: 'lining' } },
  {
    name: 'sun-hat-wide-and-large-ring',
    girth: 640,
    values: { ease: 40, brimWidth: 160, brimDrop: 0.4, brimPieces: 'whole', lining: false, crownRoom: 40 },
  },
]);
