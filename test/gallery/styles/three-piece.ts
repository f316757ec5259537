import { threePiece } from '../../../src/caps/three-piece/three-piece.ts';
import { of, type Picture } from '../picture.ts';

/** The three-piece flat cap as it comes, at its extremes, and in each way of drawing it. */
export const threePiecePictures: readonly Picture[] = of(threePiece, [
  { name: 'three-piece' },
  { name: 'three-piece-halves-on-the-fold', options: { halves: true } },
  { name: 'three-piece-inches-with-dimensions', options: { unit: 'in', dimensions: true, label: null } },
  {
    name: 'three-piece-close-and-small',
    girth: 480,
    values: {
      ease: 0,
      crownHeight: 80,
      topWidth: 160,
      overhang: 10,
      backFullness: 0,
      topFrontWidth: 60,
      topBackWidth: 50,
      visorLength: 140,
      visorDepth: 30,
      allowance: 3,
    },
  },
  {
    name: 'three-piece-broad-and-large',
    girth: 640,
    values: {
      ease: 40,
      crownHeight: 140,
      topWidth: 280,
      overhang: 45,
      backFullness: 35,
      topWidest: 0.6,
      topFrontWidth: 120,
      topBackWidth: 110,
      visorLength: 300,
      visorDepth: 90,
      visorDrop: 1,
      allowance: 20,
    },
  },
  { name: 'three-piece-plain', values: { visorSource: 'none', lining: false } },
]);
