import { mm, ratio as part, type Words, words } from '../words.ts';
import { isWithin, POSSIBLE_GIRTHS, type Range } from './surveys.ts';

/**
 * Breadth by length outside of this is a slip of the tape or of the finger: no oval to draft on. Our own range: from
 * well below all adults (0.66, ANSUR II, 2012) to a round head, beyond all of them (0.961).
 */
export const POSSIBLE_RATIOS: Range = { least: 0.6, most: 1 };

/** Why breadth by length is no head's; null where it can be. */
export const wrongRatio = (ratio: number): Words | null => {
  if (isWithin(ratio, POSSIBLE_RATIOS)) return null;
  return ratio > POSSIBLE_RATIOS.most && ratio < Infinity
    ? words`Broader than long: none of 6,068 adults is (US Army survey of 2012, ANSUR II). Are length and breadth the wrong way round?`
    : words`Breadth by length is ${part(ratio)}, which is no head. Measure both again.`;
};

/** An arc is at least as long as the head is across; and round the head is a longer way than over it. */
const POSSIBLE_ARCS: Range = { least: 0.25, most: 1 };

/** Why an arc over the head cannot be, and the nearest that can; null where it can. All in mm; the girth where it is known. */
export const wrongArc = (
  arc: number,
  girth: number | null,
): { readonly message: Words; readonly nearest: number } | null => {
  const { least, most } = girthsTimes(POSSIBLE_ARCS, girth ?? POSSIBLE_GIRTHS);
  if (isWithin(arc, { least, most })) return null;
  const nearest = arc > most ? most : least;
  if (!(arc > 0 && arc < Infinity))
    return { message: words`Type the arc over the head, or leave it empty.`, nearest };
  return {
    message: words`This cannot be the way over the head: it lies between ${mm(least)} and ${mm(most)}${girth === null ? '' : ' for this girth'}.`,
    nearest,
  };
};

/** Parts of a girth, or of all girths. */
export const girthsTimes = (parts: Range, girth: number | Range): Range =>
  typeof girth === 'number'
    ? { least: parts.least * girth, most: parts.most * girth }
    : { least: parts.least * girth.least, most: parts.most * girth.most };
