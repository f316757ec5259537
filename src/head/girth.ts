import { MM_PER_INCH, type Unit } from '../units.ts';
import { mm, type Words, words } from '../words.ts';
import { error, fine, type Judgement, warning } from './judgement.ts';
import { ADULTS, HEAD_GIRTHS, isWithin, POSSIBLE_GIRTHS } from './surveys.ts';

/** The mean of the readings, mm; null when there is none. */
export const meanGirth = (readings: readonly number[]): number | null =>
  readings.length === 0 ? null : readings.reduce((sum, reading) => sum + reading, 0) / readings.length;

/** The largest reading less the smallest, mm; nought for fewer than two. */
export const spread = (readings: readonly number[]): number =>
  readings.length < 2 ? 0 : Math.max(...readings) - Math.min(...readings);

/**
 * Readings of one head further apart than this (mm) are worth taking again. About one pair of readings in six to
 * ten with a tape that does not stretch differs by 5 mm or more (Thakkar and others, J Nepal Paediatr Soc, 2017,
 * 301 children); adults measuring themselves differ from a trained measurer by about 9 to 11 mm, one standard
 * deviation (our reading of the correlation 0.84 in Sullivan and others, Molecular Autism 5:2, 2014).
 */
const USUAL_SPREAD = 10;

/** Whether the readings agree as well as careful readings do. */
export const judgeReadings = (readings: readonly number[]): Judgement => {
  const apart = spread(readings);
  if (apart <= USUAL_SPREAD) return fine();
  return warning(
    words`The readings are ${mm(apart)} apart; careful ones agree to about ${mm(5)}. Measure again: tape level, just above the brow, round the fullest part behind, over the hair as it will be worn.`,
  );
};

/**
 * Whether a girth in mm is one that heads have. A warning outside of what the surveys of adults and children
 * measured, which are named; an error only where there can be no head under the tape. With the unit it was typed in,
 * also whether the same number in another unit would be a head.
 */
export const judgeGirth = (girth: number, unit?: Unit): Judgement => {
  if (!(girth > 0 && girth < Infinity)) return error(words`Measure round the head and type the girth.`);
  if (isWithin(girth, ADULTS.girth))
    return fine(
      words`Within what adults measure: ${mm(ADULTS.girth.least)} to ${mm(ADULTS.girth.most)} (US Army survey of 2012, ANSUR II).`,
    );
  if (isWithin(girth, HEAD_GIRTHS))
    return fine(
      words`A child’s girth: smaller than all 6,068 adults of the US Army survey of 2012 (ANSUR II); newborns begin near ${mm(HEAD_GIRTHS.least)} (WHO Child Growth Standards).`,
    );
  const likely = unit === undefined ? null : misread(girth, unit);
  const message = words`${unusual(girth)}${likely === null ? [] : words` ${likely.words}`}`;
  const judged = isWithin(girth, POSSIBLE_GIRTHS) ? warning(message) : error(message);
  return likely === null ? judged : { ...judged, likely: likely.girth };
};

const unusual = (girth: number): Words => {
  if (!isWithin(girth, POSSIBLE_GIRTHS))
    return words`This cannot be a head: girths run from ${mm(HEAD_GIRTHS.least)}, newborn (WHO Child Growth Standards), to ${mm(HEAD_GIRTHS.most)}, the largest of 6,068 adults (US Army survey of 2012, ANSUR II).`;
  return girth < HEAD_GIRTHS.least
    ? words`Smaller than nearly all newborns: their girths begin near ${mm(HEAD_GIRTHS.least)} (WHO Child Growth Standards). A baby born early can be smaller; otherwise measure again.`
    : words`Larger than all 6,068 adults of the US Army survey of 2012 (ANSUR II), who measured up to ${mm(HEAD_GIRTHS.most)}. Much hair can make it so; otherwise measure again.`;
};

/** The girth that the same number would be in another unit, when that is one that heads have. */
const misread = (girth: number, typedIn: Unit): { readonly girth: number; readonly words: Words } | null => {
  const perUnit = typedIn === 'in' ? MM_PER_INCH : 10;
  const others = [
    typedIn === 'in' ? { name: 'centimetres', mm: 10 } : { name: 'inches', mm: MM_PER_INCH },
    { name: 'millimetres', mm: 1 },
  ];
  const other = others.find(({ mm: size }) => isWithin((girth / perUnit) * size, HEAD_GIRTHS));
  if (other === undefined) return null;
  const meant = (girth / perUnit) * other.mm;
  return { girth: meant, words: words`Read in ${other.name} the same number is ${mm(meant)}.` };
};
