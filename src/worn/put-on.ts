import type { CapDraft, Head } from '../caps/style.ts';
import { ovalOfGirth } from '../geometry/oval.ts';
import { bender, crownOf } from './bend.ts';
import { openSheetOn } from './brim-on.ts';
import { drawnIn } from './drawn-in.ts';
import { cladForm, type HeadForm, headForm, outOfHead } from './head-form.ts';
import { leant } from './leant.ts';
import { brimOpeningOf, isDrawnRound, isOnOpening, type Opening, openingOf, ovalByPart } from './opening.ts';
import { seated } from './seat.ts';
import type { Sheet } from './sheet.ts';

/** A cap on a head form: z is 0 where the tape goes round the head. */
export interface Worn {
  readonly sheets: readonly Sheet[];
  readonly head: HeadForm;
  /** How far the cap's lower edge stands over the tape, mm: a shallow one sits on the top of the head. */
  readonly lift: number;
}

/** A cap that has been put on, and how its lining goes with it. */
export interface PutOn extends Worn {
  /**
   * Puts the lining's strips into the cap: laid on the oval by their own edge and raised with the shell, and where the head, in
   * the cloth that lies between, would come through them, laid on it.
   */
  readonly line: (lining: readonly Sheet[]) => readonly Sheet[];
}

/**
 * The head makes a soft cap oval: its lower edge is laid on an oval of the same girth and of the head's breadth by length,
 * each point at its distance along from the centre back, and what is above goes with it, level by level and less towards the
 * top, which keeps its own shape. Seams that were closed stay closed: their two sides are moved as one, and between knots their
 * chords differ by less than 0.05 mm. A visor, which is cut for that oval, is laid on it by its own length; a brim keeps its
 * slope. Then the cap is set down until it rests on the head, and a
 * soft top that would stop it too high is held up by the head instead. What is bent so is no longer as long everywhere as
 * it is cut: cloth gives by that much (see giveOf).
 * Tilted, it is leant to the wearer's right before it is set down.
 */
export const putOn = (
  sheets: readonly Sheet[],
  { pattern, finishedGirth }: Pick<CapDraft, 'pattern' | 'finishedGirth'>,
  head: Head,
  tilted = false,
): PutOn => {
  const form = headForm(head);
  const lean = (upright: readonly Sheet[]) => (tilted ? leant(upright) : upright);
  const around = head.turn?.shell ?? 0;
  const opening = openingOf(sheets, pattern);
  const crown = crownOf(sheets);
  /** Laid by an edge on the head's oval, where the cap stands on its edge. */
  const bent = (some: readonly Sheet[], edge: Opening | null, thick: number): readonly Sheet[] => {
    if (opening === null || edge === null) return some;
    // A likeness is drawn about the opening, and chords fall short of it; but one that a strap takes in is as long as it is cut.
    const closed = finishedGirth + thick;
    const girth = edge.girth > closed + LET_OUT && !some.some(isLikenessOfCrown) ? edge.girth : closed;
    const round = ovalByPart(ovalOfGirth(girth, head.ratio));
    const bend = bender(edge, round, crown);
    const brim = brimOpeningOf(some);
    return some.map((sheet) => {
      // A button on the axis is hard: it stays round.
      if (sheet.piece === 'topButton') return sheet;
      return isOnOpening(sheet) ? openSheetOn(sheet, brim, round, girth) : { ...sheet, at: bend(sheet.at) };
    });
  };
  const upright = bent(sheets, opening, around);
  const soft = opening !== null && isDrawnRound(opening);
  const seat = seated(upright, lean(upright), cladForm(form, head.girth, around), soft);
  return {
    sheets: seat.sheets,
    lift: seat.lift,
    head: form,
    line: (lining) => {
      const thick = head.turn?.lining ?? 0;
      const own = drawnIn(bent(lining, openingOf(lining, pattern), thick), upright);
      const clad = cladForm(form, head.girth, thick);
      return seat
        .within(own, lean(own))
        .map((sheet) => ({ ...sheet, lining: true, at: outOfHead(clad, sheet.at) }));
    },
  };
};

/** An opening that is so much longer than the finished cap is let out, mm. */
const LET_OUT = 1;

const isLikenessOfCrown = ({ likeness, open, at }: Sheet): boolean =>
  likeness && !open && at.some((z, k) => k % 3 === 2 && z === 0);
