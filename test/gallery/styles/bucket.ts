import { bucket } from '../../../src/caps/bucket/bucket.ts';
import { of, type Picture } from '../picture.ts';

/** The bucket hat as it comes, each way its brim can be cut, and at its extremes. */
export const bucketPictures: readonly Picture[] = of(bucket, [
  { name: 'bucket' },
  { name: 'bucket-halves-on-the-fold', options: { halves: true }, values: { brimPieces: '2' } },
  {
    name: 'bucket-inches-with-dimensions',
    options: { unit: 'in', dimensions: true, label: null },
    values: { brimPieces: '2', brimHalves: 'centre', sideBandPieces: '2' },
  },
  {
    name: 'bucket-reversible-oval',
    values: { reversible: true, brimShape: 'oval', brimPieces: '4', sideBandPieces: '4' },
  },
  { name: 'bucket-in-sections', values: { brimShape: 'oval', brimPieces: '3', brimBody: 'stiffener' } },
  {
    name: 'bucket-steep-and-small',
    girth: 480,
    values: { ease: 0, brimWidth: 30, brimDrop: 1.3, sideBandHeight: 50, crownTaper: 0, allowance: 3 },
  },
  {
    name: 'bucket-wide-and-large',
    girth: 640,
    values: { ease: 40, brimWidth: 140, brimDrop: 0.6, sideBandHeight: 110, crownTaper: 120, allowance: 15 },
  },
]);
