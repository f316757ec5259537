import type { Problem } from '../../pattern/problem.ts';
import { mm, words } from '../../words.ts';
import { strapProblems } from '../parts/strap/problems.ts';
import { visorProblems } from '../parts/visor/problems.ts';
import type { Head } from '../style.ts';
import { checkValues, fieldOf } from '../validate.ts';
import { type FlatTopValues, flatTopParameters } from './parameters.ts';

/** What of a wished flat-top cap cannot be sewn, each with the nearest value that can. */
export const flatTopProblems = (values: FlatTopValues, head: Head): readonly Problem[] => {
  const outOfRange = checkValues(flatTopParameters, values);
  if (outOfRange.length > 0) return outOfRange;
  return [...crownTooFull(values), ...visorProblems(values, head), ...strapProblems(values)];
};

/**
 * At a fullness of 2π × height the side band lies flat and the crown has no height left. The lining, smaller both
 * round and in height, reaches that point first.
 */
const crownTooFull = ({
  crownFullness,
  sideBandHeight,
  lining,
  liningTake,
}: FlatTopValues): readonly Problem[] => {
  const take = lining ? liningTake : 0;
  const limit = Math.min(2 * Math.PI * sideBandHeight, 2 * Math.PI * (sideBandHeight - take) + take);
  if (crownFullness < limit) return [];
  return [
    {
      field: fieldOf('crownFullness'),
      message: words`A side band ${mm(sideBandHeight)} high cannot reach out that far: it would lie flat at ${mm(limit)}. Less fullness, or a higher side band.`,
      nearest: Math.max(0, Math.ceil(limit / 5 - 1) * 5),
    },
  ];
};
