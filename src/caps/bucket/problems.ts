import type { Problem } from '../../pattern/problem.ts';
import { openingOf } from '../opening.ts';
import { brimProblems } from '../parts/brim/problems.ts';
import { brimRatio } from '../parts/brimmed/brim-ratio.ts';
import { allowancesOf } from '../parts/seams/allowances.ts';
import { sweatbandProblems } from '../parts/sweatband/problems.ts';
import { narrowingCrown } from '../parts/tipped-crown/opening.ts';
import type { Head } from '../style.ts';
import { checkValues } from '../validate.ts';
import { type BucketValues, bucketParameters } from './parameters.ts';

/** What of a wished bucket hat cannot be sewn, each with the nearest value that can. */
export const bucketProblems = (values: BucketValues, head: Head): readonly Problem[] => {
  const outOfRange = checkValues(bucketParameters, values);
  if (outOfRange.length > 0) return outOfRange;
  const girth = openingOf(head, values.ease).shell;
  const { opening } = narrowingCrown(girth, brimRatio(values, head), values.crownTaper);
  const slope = { opening, width: values.brimWidth, drop: values.brimDrop };
  return [
    ...(values.reversible ? [] : sweatbandProblems(values)),
    ...brimProblems(values, slope, allowancesOf(values)),
  ];
};
