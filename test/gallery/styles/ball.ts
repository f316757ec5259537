import { ball } from '../../../src/caps/ball/ball.ts';
import { clothsOf } from '../../guide/caps.ts';
import { of, type Picture } from '../picture.ts';

/** The ball cap as it comes, with either fastening, and at its extremes. */
export const ballPictures: readonly Picture[] = of(ball, [
  { name: 'ball' },
  { name: 'ball-with-rows-on-buckram', rowsFor: clothsOf({ stiffener: 'buckram' }) },
  { name: 'ball-inches-with-dimensions', options: { unit: 'in', dimensions: true, label: null } },
  {
    name: 'ball-with-an-elastic',
    values: { backFastening: 'elastic', openingWidth: 80, openingHeight: 44, backStrapWidth: 24 },
  },
  {
    name: 'ball-round-and-small',
    girth: 480,
    values: {
      ease: 0,
      frontSteepness: 0,
      crownRoom: -10,
      goreWidest: 0.1,
      visorLength: 120,
      visorDepth: 40,
      openingWidth: 60,
      openingHeight: 30,
      backRoom: 10,
      backOverlap: 10,
      backStrapWidth: 15,
      eyelets: false,
      topButton: false,
      allowance: 3,
    },
  },
  {
    name: 'ball-tall-and-large',
    girth: 640,
    values: {
      ease: 40,
      frontSteepness: 0.35,
      crownRoom: 40,
      goreWidest: 0.36,
      visorLength: 260,
      visorDepth: 90,
      openingWidth: 110,
      openingHeight: 75,
      backRoom: 40,
      backOverlap: 15,
      backStrapWidth: 32,
      allowance: 15,
    },
  },
]);
