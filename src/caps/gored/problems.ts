import type { Problem } from '../../pattern/problem.ts';
import { goreProblems } from '../parts/gore/problems.ts';
import { strapProblems } from '../parts/strap/problems.ts';
import { visorProblems } from '../parts/visor/problems.ts';
import type { Head } from '../style.ts';
import { checkValues } from '../validate.ts';
import { bandOf, type GoredValues, goredParameters, hasStrap } from './parameters.ts';

/** What of a wished gored cap cannot be sewn, each with the nearest value that can. */
export const goredProblems = (values: GoredValues, head: Head): readonly Problem[] => {
  const outOfRange = checkValues(goredParameters, values);
  if (outOfRange.length > 0) return outOfRange;
  const taken = { bandHeight: bandOf(values), liningTake: values.lining ? values.liningTake : 0 };
  return [
    ...goreProblems(values, head, taken),
    ...visorProblems(values, head),
    ...strapProblems({ ...values, strap: hasStrap(values) }),
  ];
};
