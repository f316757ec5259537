import type { Problem } from '../../pattern/problem.ts';
import { mm, words } from '../../words.ts';
import { roomOf } from '../parts/back-strap/back-strap.ts';
import { backStrapProblems } from '../parts/back-strap/problems.ts';
import { goreProblems } from '../parts/gore/problems.ts';
import { visorProblems } from '../parts/visor/problems.ts';
import type { Head } from '../style.ts';
import { checkValues, fieldOf } from '../validate.ts';
import { ballMeasures } from './measures.ts';
import { type BallValues, ballParameters } from './parameters.ts';
import { GORES } from './profile.ts';

/** What of a wished ball cap cannot be sewn, each with the nearest value that can. */
export const ballProblems = (values: BallValues, head: Head): readonly Problem[] => {
  const outOfRange = checkValues(ballParameters, values);
  if (outOfRange.length > 0) return outOfRange;
  const crown = { ...values, ease: values.ease + roomOf(values), gores: GORES };
  return [
    ...goreProblems(crown, head, { bandHeight: 0, liningTake: 0 }),
    ...openingTooHigh(values, head),
    ...openingTooWide(values, head),
    ...backStrapProblems(values),
    ...visorProblems(values, head),
  ];
};

/** Above the opening enough of the seam must be left to hold the crown together, and to keep clear of the eyelets. */
const HIGHEST = 0.55;
/** Beside the opening this much of each back gore's lower edge is left, mm: for the strap's end and a seam. */
const BESIDE = 20;

const openingTooHigh = (values: BallValues, head: Head): readonly Problem[] => {
  const limit = HIGHEST * ballMeasures(values, head).wish.length;
  if (values.openingHeight <= limit) return [];
  return [
    {
      field: fieldOf('openingHeight'),
      message: words`The opening would go too far up this crown: ${mm(limit)} is the most.`,
      nearest: Math.floor(limit),
    },
  ];
};

const openingTooWide = (values: BallValues, head: Head): readonly Problem[] => {
  const limit = 2 * (ballMeasures(values, head).wish.girth / GORES - BESIDE);
  if (values.openingWidth <= limit) return [];
  return [
    {
      field: fieldOf('openingWidth'),
      message: words`The opening would take nearly all of the two back gores: ${mm(limit)} is the most.`,
      nearest: Math.floor(limit),
    },
  ];
};
