import { isRound, type Oval, ovalGirth } from '../../../geometry/oval.ts';
import type { Figure } from '../../../pattern/piece.ts';
import { exactMm, mm, ratio, words } from '../../../words.ts';
import type { Fact } from '../../style.ts';

/** What stands in plain sight of a crown with a flat top: how far round its edge is, and how large the top. */
export const tipFacts = (rim: Oval, crownGirth: readonly Figure[]): readonly Fact[] => [
  {
    id: 'crown',
    name: 'Crown',
    figure: words`${mm(ovalGirth(rim))}`,
    title: 'Crown girth',
    reckoning: crownGirth,
  },
  tipFact(rim),
];

/** How large a flat top is. */
export const tipFact = (rim: Oval): Fact => {
  const girth = ovalGirth(rim);
  const [length, breadth] = [2 * rim.halfLength, 2 * rim.halfBreadth];
  const round = isRound(rim);
  return {
    id: 'tip',
    name: 'Tip',
    figure: round ? words`${mm(length)} across` : words`${mm(length)} × ${mm(breadth)}`,
    title: 'The tip',
    reckoning: [
      round
        ? {
            name: 'Tip, across',
            formula: 'crown girth ÷ π',
            worked: words`${exactMm(girth)} ÷ 3.1416 = ${exactMm(length)}`,
          }
        : {
            name: 'Tip, length and breadth',
            formula: 'the oval of that girth and shape',
            worked: words`an ellipse ${exactMm(girth)} round, breadth ${ratio(breadth / length)} of length: ${exactMm(length)} × ${exactMm(breadth)}`,
          },
    ],
  };
};
