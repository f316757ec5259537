import { type Words, words } from '../words.ts';

/** What two rules for children's things cover and what they do not, and what to do all the same. */
export const forAChild: readonly Words[] = [
  words`In the United States the rule on small parts, 16 CFR 1501, is for toys and goods for a child under three. It leaves out children’s clothes and their buttons by name. It does not count cloth, yarn or elastic.`,
  words`In Europe the standard EN 14682 is on cords on clothes for children up to 14 years. It leaves out hats and bonnets. A draft of 2023 says that they should be judged in the same spirit.`,
  words`One national authority allows no cords at the head or neck under seven years, and none with free ends there up to 14.`,
  words`So no rule may bind you, but loose parts can choke and cords can strangle. Take more care than the rules ask.`,
  words`No cords and no ties. A strap only if it comes apart when it is pulled.`,
  words`No buttons and no glued pompons for a child under three. After that, flat buttons sewn through all layers.`,
  words`Rules where you live, and the advice of those who know, come first.`,
];

/** Inside girths below this are those of a child's head, mm: about the median at ten years (common practice). */
export const CHILD = 540;
