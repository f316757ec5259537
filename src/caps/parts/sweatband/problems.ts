import type { Problem } from '../../../pattern/problem.ts';
import { mm, words } from '../../../words.ts';
import { fieldOf } from '../../validate.ts';

/** What of a wished sweatband has no room inside the side below a tip; both heights in mm. */
export const sweatbandProblems = ({
  sweatbandHeight,
  sideBandHeight,
}: {
  readonly sweatbandHeight: number;
  readonly sideBandHeight: number;
}): readonly Problem[] =>
  sweatbandHeight <= sideBandHeight
    ? []
    : [
        {
          field: fieldOf('sweatbandHeight'),
          message: words`The sweatband lies inside the side, which is ${mm(sideBandHeight)} high.`,
          nearest: sideBandHeight,
        },
      ];
