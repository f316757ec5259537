import type { Problem } from '../../pattern/problem.ts';
import { brimProblems } from '../parts/brim/problems.ts';
import { goreProblems } from '../parts/gore/problems.ts';
import { allowancesOf } from '../parts/seams/allowances.ts';
import { sweatbandProblems } from '../parts/sweatband/problems.ts';
import type { Head } from '../style.ts';
import { checkValues } from '../validate.ts';
import { sunHatOpening } from './crown.ts';
import { type SunHatValues, sunHatParameters } from './parameters.ts';

/** What of a wished sun hat cannot be sewn, each with the nearest value that can. */
export const sunHatProblems = (values: SunHatValues, head: Head): readonly Problem[] => {
  const outOfRange = checkValues(sunHatParameters, values);
  if (outOfRange.length > 0) return outOfRange;
  const taken = { bandHeight: 0, liningTake: values.lining ? values.liningTake : 0 };
  const slope = { opening: sunHatOpening(values, head), width: values.brimWidth, drop: values.brimDrop };
  return [
    ...(values.crown === 'gored' ? goreProblems(values, head, taken) : sweatbandProblems(values)),
    ...brimProblems(values, slope, allowancesOf(values)),
  ];
};
