import type { Problem } from '../../../pattern/problem.ts';
import { mm, words } from '../../../words.ts';
import { fieldOf } from '../../validate.ts';
import type { StrapValues } from './parameters.ts';
import { STRAP_ROOM } from './strap.ts';

/** What of a wished strap and its buttons has no room on its band. */
export const strapProblems = ({
  strap,
  strapWidth,
  buttonDiameter,
  bandHeight,
}: StrapValues & { readonly bandHeight: number }): readonly Problem[] => {
  if (!strap) return [];
  const most = bandHeight - STRAP_ROOM;
  const problem = (key: string, message: Problem['message']): Problem => ({
    field: fieldOf(key),
    message,
    nearest: Math.floor(most),
  });
  return [
    ...(strapWidth <= most
      ? []
      : [problem('strapWidth', words`The strap lies on the band, which is ${mm(bandHeight)} high.`)]),
    ...(buttonDiameter <= most
      ? []
      : [problem('buttonDiameter', words`The buttons lie on the band, which is ${mm(bandHeight)} high.`)]),
  ];
};
