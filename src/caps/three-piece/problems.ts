import type { Problem } from '../../pattern/problem.ts';
import { openingOf } from '../opening.ts';
import { crownTooLow, endTooWide } from '../parts/top-and-sides/problems.ts';
import { visorProblems } from '../parts/visor/problems.ts';
import type { Head } from '../style.ts';
import { checkValues } from '../validate.ts';
import { capOpening, profileOf } from './crown.ts';
import { type ThreePieceValues, threePieceParameters } from './parameters.ts';

/** The widest end of a top, as a share of the opening's breadth. */
const WIDEST_END = 0.75;

/** What of a wished three-piece flat cap cannot be sewn or worn, each with the nearest value that can. */
export const threePieceProblems = (values: ThreePieceValues, head: Head): readonly Problem[] => {
  const outOfRange = checkValues(threePieceParameters, values);
  if (outOfRange.length > 0) return outOfRange;
  const round = { ...head, girth: openingOf(head, values.ease).shell };
  const tooWide = [
    ...endTooWide('topFrontWidth', values.topFrontWidth, WIDEST_END, round),
    ...endTooWide('topBackWidth', values.topBackWidth, WIDEST_END, round),
  ];
  return [...tooWide, ...(tooWide.length > 0 ? [] : tooLow(values, head)), ...visorProblems(values, head)];
};

const tooLow = (values: ThreePieceValues, head: Head): readonly Problem[] => {
  const opening = capOpening(values, head);
  return crownTooLow(
    { ...values, opening, profileOf: (crownHeight) => profileOf({ ...values, crownHeight }, opening) },
    head.arc,
  );
};
