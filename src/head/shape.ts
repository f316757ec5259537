import { mm, ratio as part, words } from '../words.ts';
import { ARC_PARTS } from './head-arc.ts';
import { error, fine, type Judgement, warning } from './judgement.ts';
import { girthsTimes, POSSIBLE_RATIOS, wrongArc, wrongRatio } from './possible-shape.ts';
import { ADULTS, isWithin, POSSIBLE_GIRTHS, type Range, TODDLERS } from './surveys.ts';

/**
 * Breadth by length of the ovals that caps are drafted on: our own range. The lower end is the 5th percentile of
 * adults (0.723, ANSUR II, 2012); the upper end is a round head, beyond all of them (0.961).
 */
export const USUAL_RATIOS: Range = { least: 0.72, most: POSSIBLE_RATIOS.most };

/**
 * Whether a head's length, brow to the back, is one that heads have. Both in mm; the girth where it is known, for
 * no closed line is shorter than there and back across it.
 */
export const judgeLength = (length: number, girth: number | null = null): Judgement =>
  judgeAcross(length, girth, 'length', ADULTS.length, TODDLERS.length);

/** Whether a head's breadth above the ears is one that heads have, as `judgeLength`. */
export const judgeBreadth = (breadth: number, girth: number | null = null): Judgement =>
  judgeAcross(breadth, girth, 'breadth', ADULTS.breadth, TODDLERS.breadth);

const judgeAcross = (
  across: number,
  girth: number | null,
  name: string,
  adults: Range,
  toddlers: number,
): Judgement => {
  if (!(across > 0 && across < Infinity)) return error(words`Type the head’s ${name}, or leave it empty.`);
  const most = (girth ?? POSSIBLE_GIRTHS.most) / 2;
  if (across > most)
    return error(
      words`Across the head is never more than half the girth, ${mm(most)}. Measure straight across, not along the head.`,
    );
  if (across < LEAST_ACROSS) return error(words`This cannot be a head’s ${name}.`);
  if (across > adults.most)
    return warning(
      words`More than the ${name} of any of 6,068 adults, ${mm(adults.most)} (US Army survey of 2012, ANSUR II). Measure straight across, between two books held upright.`,
    );
  if (across < Math.min(adults.least, toddlers))
    return warning(
      words`Less than the ${name} of nearly all heads from two years up, ${mm(toddlers)} (US survey of children, 1977). A baby’s can be less; otherwise measure again.`,
    );
  return fine();
};

/** Less than any head is across, mm: half as broad as long, at the least possible girth. Our own choice. */
const LEAST_ACROSS = 40;

/** Whether breadth by length is that of a head. An unusual one can be true: about one adult in twenty is narrower. */
export const judgeRatio = (ratio: number): Judgement => {
  const wrong = wrongRatio(ratio);
  if (wrong !== null) return error(wrong);
  if (isWithin(ratio, USUAL_RATIOS)) return fine();
  return warning(
    words`A long, narrow head: about one adult in twenty has less than ${part(USUAL_RATIOS.least)} (US Army survey of 2012, ANSUR II). If both were measured twice, keep it.`,
  );
};

const USUAL_ARCS: Range = { least: 0.43, most: 0.7 };

/** Whether an arc over the head is one that heads have. Both in mm; the girth where it is known. */
export const judgeArc = (arc: number, girth: number | null = null): Judgement => {
  const wrong = wrongArc(arc, girth);
  if (wrong !== null) return error(wrong.message);
  const usual = girthsTimes(USUAL_ARCS, girth ?? POSSIBLE_GIRTHS);
  if (isWithin(arc, usual)) return fine();
  return warning(
    words`Over the head is about ${part(ARC_PARTS.sideToSide)} of the girth from side to side and ${part(ARC_PARTS.frontToBack)} from front to back (Practical Millinery, 1922): an estimate. This is far from both; measure from edge to edge where the cap will sit.`,
  );
};
