import type { Problem } from '../../pattern/problem.ts';
import { goreProblems } from '../parts/gore/problems.ts';
import type { Head } from '../style.ts';
import { checkValues } from '../validate.ts';
import { type SkullValues, skullParameters } from './parameters.ts';

/** What of a wished skull cap cannot be sewn, each with the nearest value that can. */
export const skullProblems = (values: SkullValues, head: Head): readonly Problem[] => {
  const outOfRange = checkValues(skullParameters, values);
  if (outOfRange.length > 0) return outOfRange;
  return goreProblems(values, head, {
    bandHeight: 0,
    liningTake: values.lining ? values.liningTake : 0,
  });
};
