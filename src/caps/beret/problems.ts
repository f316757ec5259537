import type { Problem } from '../../pattern/problem.ts';
import { degrees } from '../../units.ts';
import { radians, words } from '../../words.ts';
import { openingOf } from '../opening.ts';
import { allowancesOf } from '../parts/seams/allowances.ts';
import type { Head } from '../style.ts';
import { checkValues, fieldOf } from '../validate.ts';
import { type BeretValues, beretParameters } from './parameters.ts';

/** What of a wished beret cannot be sewn, each with the nearest value that can. */
export const beretProblems = (values: BeretValues, head: Head): readonly Problem[] => {
  const outOfRange = checkValues(beretParameters, values);
  if (outOfRange.length > 0) return outOfRange;
  return ringTooFlat(values, head);
};

/** Left between the cut ends of a ring, mm: less cannot be cut with shears (our own measure). */
const SNIP = 2;

/**
 * A whole ring that lies nearly flat closes up on itself: there is no cloth between its ends for two seam allowances.
 * Its inner radius is the opening's ÷ cos slope, and the wedge that is missing 2π · (1 − cos slope).
 */
const ringTooFlat = (values: BeretValues, head: Head): readonly Problem[] => {
  const { beretCrown, underPieces, underSlope, ease, lining } = values;
  if (beretCrown !== 'disc' || underPieces !== '1') return [];
  const { side, band } = allowancesOf(values);
  const opening = openingOf(head, ease);
  // The lining's ring, a little smaller, is the first to close.
  const girth = lining ? opening.lining : opening.shell;
  const opens = (slope: number): boolean => {
    const inner = girth / (2 * Math.PI * Math.cos(slope)) - band;
    const gap = 2 * inner * Math.sin(Math.PI * (1 - Math.cos(slope)));
    return gap >= 2 * side + SNIP;
  };
  if (opens(underSlope)) return [];
  let steps = Math.floor(underSlope / degrees(1)) + 1;
  while (!opens(degrees(steps))) steps++;
  return [
    {
      field: fieldOf('underSlope'),
      message: words`So flat a ring leaves no cloth between its ends for the back seam; at ${radians(degrees(steps))} there is room. Steeper, or in halves.`,
      nearest: degrees(steps),
    },
  ];
};
