import type { Problem } from '../../../pattern/problem.ts';
import { mm, words } from '../../../words.ts';
import { fieldOf } from '../../validate.ts';
import type { StrapValues } from './parameters.ts';
import { STRAP_ROOM } from './strap.ts';

/** What of a wished strap has no room on its band. */
export const strapProblems = ({
  strap,
  strapWidth,
  bandHeight,
}: StrapValues & { readonly bandHeight: number }): readonly Problem[] => {
  if (!strap || strapWidth + STRAP_ROOM <= bandHeight) return [];
  return [
    {
      field: fieldOf('strapWidth'),
      message: words`The strap lies on the band, which is ${mm(bandHeight)} high.`,
      nearest: Math.floor(bandHeight - STRAP_ROOM),
    },
  ];
};
