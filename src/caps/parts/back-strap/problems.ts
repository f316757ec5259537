import type { Problem } from '../../../pattern/problem.ts';
import { mm, words } from '../../../words.ts';
import { fieldOf } from '../../validate.ts';
import type { BackOpeningValues } from '../back-opening/parameters.ts';
import { type BackStrapValues, backStrapParameters } from './parameters.ts';

/** Clear of the strap the arch stays open at least this high, mm: or there is nothing to see of it. */
const CLEAR = 10;

/** What of a wished fastening does not go with its opening. */
export const backStrapProblems = (values: BackOpeningValues & BackStrapValues): readonly Problem[] => [
  ...strapTooWide(values),
  ...(values.backFastening === 'strap' ? strapTooLong(values) : []),
];

const strapTooWide = ({
  backStrapWidth,
  openingHeight,
}: BackOpeningValues & BackStrapValues): readonly Problem[] => {
  if (backStrapWidth + CLEAR <= openingHeight) return [];
  return [
    {
      field: fieldOf('backStrapWidth'),
      message: words`The strap closes the opening, which is ${mm(openingHeight)} high.`,
      nearest: Math.floor(openingHeight - CLEAR),
    },
  ];
};

/** At the finished girth a half that went past the whole opening would lie on the crown. */
const strapTooLong = ({
  openingWidth,
  backRoom,
  backOverlap,
}: BackOpeningValues & BackStrapValues): readonly Problem[] => {
  const free = openingWidth / 2 - backRoom;
  const least = backStrapParameters.backOverlap.min;
  if (free < least) {
    return [
      {
        field: fieldOf('backRoom'),
        message: words`An opening ${mm(openingWidth)} wide cannot be drawn in that far.`,
        nearest: Math.floor(openingWidth / 2 - least),
      },
    ];
  }
  if (backOverlap <= free) return [];
  return [
    {
      field: fieldOf('backOverlap'),
      message: words`Drawn in, the strap would reach past the opening: there is room for ${mm(free)}.`,
      nearest: Math.floor(free),
    },
  ];
};
