import { beret } from '../../../src/caps/beret/beret.ts';
import { of, type Picture } from '../picture.ts';

/** The beret as it comes, in each way of making it, and at its extremes. */
export const beretPictures: readonly Picture[] = of(beret, [
  { name: 'beret' },
  { name: 'beret-flat-in-halves-with-dimensions', values: { underSlope: 0 }, options: { dimensions: true } },
  {
    name: 'beret-in-one-ring-on-the-fold',
    values: { underPieces: '1', underSlope: 0.6 },
    options: { halves: true },
  },
  { name: 'beret-in-quarters-unlined', values: { underPieces: '4', lining: false } },
  { name: 'beret-in-gores', values: { beretCrown: 'gored', spread: 60 } },
  {
    name: 'beret-in-five-gores',
    values: { beretCrown: 'gored', gores: 5, frontSeam: 'panel', underSlope: 0 },
  },
  { name: 'beret-gathered', values: { beretCrown: 'gathered', spread: 80 } },
  {
    name: 'beret-narrow-and-small',
    girth: 480,
    values: { ease: 0, spread: 15, bandHeight: 20, allowance: 3, underPieces: '1', underSlope: 1 },
  },
]);
