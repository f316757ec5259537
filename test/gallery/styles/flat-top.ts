import { flatTop } from '../../../src/caps/flat-top/flat-top.ts';
import { CORDUROY, WINTER } from '../../caps/cloths.ts';
import { clothsOf } from '../../guide/caps.ts';
import { of, type Picture } from '../picture.ts';

/** The flat-top cap as it comes, at its extremes, and in each way of drawing it. */
export const flatTopPictures: readonly Picture[] = of(flatTop, [
  { name: 'flat-top' },
  { name: 'flat-top-with-rows', rowsFor: clothsOf({}) },
  { name: 'flat-top-with-rows-on-the-fold', rowsFor: clothsOf({}), options: { halves: true } },
  { name: 'flat-top-halves-on-the-fold', options: { halves: true } },
  { name: 'flat-top-inches-with-dimensions', options: { unit: 'in', dimensions: true, label: null } },
  { name: 'flat-top-oval-in-quarters', values: { tipRatio: 0.78 } },
  { name: 'flat-top-oval-in-halves', values: { tipRatio: 0.78, sideBandPieces: '2' } },
  {
    name: 'flat-top-neat-and-small',
    girth: 480,
    values: {
      ease: 0,
      crownFullness: 0,
      sideBandHeight: 30,
      bandHeight: 20,
      visorLength: 120,
      visorDepth: 30,
      visorDrop: 0,
      visorFullness: 0,
      strapWidth: 8,
      allowance: 3,
    },
  },
  {
    name: 'flat-top-full-and-large',
    girth: 640,
    values: {
      ease: 40,
      crownFullness: 300,
      sideBandHeight: 110,
      bandHeight: 70,
      visorLength: 300,
      visorDepth: 90,
      visorDrop: 1,
      visorFullness: 1,
      strapWidth: 30,
      allowance: 20,
    },
  },
  { name: 'flat-top-for-a-bought-insert', values: { visorSource: 'insert' } },
  { name: 'flat-top-high-in-front', values: { crownFullness: 130, sideBandHeight: 60, crownTilt: 40 } },
  {
    name: 'flat-top-high-in-front-in-halves',
    values: { crownTilt: 60, tipRatio: 0.85, sideBandPieces: '2', lining: false },
  },
  {
    name: 'flat-top-gathered',
    values: { crownFullness: 200, sideBandHeight: 80, crownGather: 0.4, strap: false, lining: false },
  },
  {
    name: 'flat-top-pleated-in-quarters',
    values: { crownFullness: 180, sideBandHeight: 75, crownGather: 0.3, gatherAs: 'pleats', pleats: 3 },
  },
  {
    name: 'flat-top-pleated-in-halves-on-the-fold',
    values: {
      crownFullness: 140,
      crownTilt: 30,
      crownGather: 0.4,
      gatherAs: 'pleats',
      pleats: 4,
      sideBandPieces: '2',
    },
    options: { halves: true },
  },
  { name: 'flat-top-in-corduroy-with-dimensions', cloths: CORDUROY, options: { dimensions: true } },
  { name: 'flat-top-for-a-bought-insert-in-winter-cloth', values: { visorSource: 'insert' }, cloths: WINTER },
  { name: 'flat-top-plain', values: { strap: false, lining: false } },
]);
