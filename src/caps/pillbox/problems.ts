import type { Problem } from '../../pattern/problem.ts';
import { sweatbandProblems } from '../parts/sweatband/problems.ts';
import { checkValues } from '../validate.ts';
import { type PillboxValues, pillboxParameters } from './parameters.ts';

/** What of a wished pillbox cannot be sewn, each with the nearest value that can. */
export const pillboxProblems = (values: PillboxValues): readonly Problem[] => {
  const outOfRange = checkValues(pillboxParameters, values);
  return outOfRange.length > 0 ? outOfRange : sweatbandProblems(values);
};
