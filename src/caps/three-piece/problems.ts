import { ovalOfGirth } from '../../geometry/oval.ts';
import type { Problem } from '../../pattern/problem.ts';
import { mm, words } from '../../words.ts';
import { visorProblems } from '../parts/visor/problems.ts';
import type { Head } from '../style.ts';
import { checkValues, fieldOf } from '../validate.ts';
import { capOpening, profileOf, topLength } from './crown.ts';
import { type ThreePieceValues, threePieceParameters } from './parameters.ts';

/** What of a wished three-piece flat cap cannot be sewn or worn, each with the nearest value that can. */
export const threePieceProblems = (values: ThreePieceValues, head: Head): readonly Problem[] => {
  const outOfRange = checkValues(threePieceParameters, values);
  if (outOfRange.length > 0) return outOfRange;
  const tooWide = [...endTooWide('topFrontWidth', values, head), ...endTooWide('topBackWidth', values, head)];
  return [...tooWide, ...(tooWide.length > 0 ? [] : tooLow(values, head)), ...visorProblems(values, head)];
};

/** Wider than this share of the opening's breadth, the end of a top would leave its sides no way round the head. */
const WIDEST_END = 0.75;

const endTooWide = (
  key: 'topFrontWidth' | 'topBackWidth',
  values: ThreePieceValues,
  head: Head,
): readonly Problem[] => {
  const limit = WIDEST_END * 2 * ovalOfGirth(head.girth + values.ease, head.ratio).halfBreadth;
  if (values[key] <= limit) return [];
  const nearest = Math.floor(limit);
  return [
    {
      field: fieldOf(key),
      message: words`The opening is too narrow for that on this head: ${mm(nearest)} at most.`,
      nearest,
    },
  ];
};

/** How far the cloth reaches over the head, front to back and from side to side, mm: the less of the two. */
const reachOver = (values: ThreePieceValues, head: Head): number => {
  const opening = capOpening(values, head);
  const half = values.topWidth / 2;
  const across = 2 * (half + Math.hypot(values.crownHeight, half - opening.oval.halfBreadth));
  return Math.min(topLength(profileOf(values, opening)), across);
};

const tooLow = (values: ThreePieceValues, head: Head): readonly Problem[] => {
  const reach = reachOver(values, head);
  if (reach >= head.arc) return [];
  const { max, step } = threePieceParameters.crownHeight;
  const heights = Array.from({ length: Math.ceil((max - values.crownHeight) / step) }, (_, i) =>
    Math.min(max, Math.ceil(values.crownHeight / step) * step + i * step),
  );
  const nearest = heights.find((crownHeight) => reachOver({ ...values, crownHeight }, head) >= head.arc);
  return [
    {
      field: fieldOf('crownHeight'),
      message: words`The cap is ${mm(reach)} over the top from edge to edge; this head is ${mm(head.arc)}. A higher crown reaches over it.`,
      ...(nearest === undefined ? {} : { nearest }),
    },
  ];
};
