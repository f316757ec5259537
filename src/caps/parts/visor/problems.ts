import type { Problem } from '../../../pattern/problem.ts';
import { exactMm, mm, words } from '../../../words.ts';
import { openingOf } from '../../opening.ts';
import type { Head } from '../../style.ts';
import { fieldOf } from '../../validate.ts';
import type { VisorValues } from './parameters.ts';
import { insertCrosses, insertInnerEdge } from './visor-insert.ts';

/** A visor's values, and the ease that the opening it is sewn to has. */
type Wish = VisorValues & { readonly ease: number };
type Check = (values: Wish, head: Head) => Problem | null;

/** What of a wished visor cannot be sewn to this head's cap. */
export const visorProblems = (values: Wish, head: Head): readonly Problem[] =>
  [visorTooLong, tipTooRound, clearanceTooWide, insertTooBowed, insertTooLong, widthsCross].flatMap(
    (check) => check(values, head) ?? [],
  );

/** The greatest whole step below a limit. */
const below = (limit: number, step: number): number => Math.max(0, Math.ceil(limit / step - 1) * step);

const visorTooLong: Check = ({ visorSource, visorLength, ease }, head) => {
  const half = openingOf(head, ease).shell / 2;
  if (visorSource !== 'drafted' || visorLength <= half) return null;
  return {
    field: fieldOf('visorLength'),
    message: words`The visor would go more than half-way round the head; half of this cap is ${mm(half)}.`,
    nearest: Math.floor(half),
  };
};

const tipTooRound: Check = ({ visorSource, visorTipRounding, visorDepth }) => {
  if (visorSource !== 'drafted' || visorTipRounding * 2 < visorDepth) return null;
  return {
    field: fieldOf('visorTipRounding'),
    message: words`The rounding must be less than half the visor’s depth, ${mm(visorDepth / 2)}.`,
    nearest: below(visorDepth / 2, 1),
  };
};

/** Moved in by more than half its rounding the stiffener's tip would come to a point, where it wears through. */
const clearanceTooWide: Check = ({ visorSource, visorTipRounding, stiffenerClearance }) => {
  if (visorSource !== 'drafted' || stiffenerClearance <= visorTipRounding / 2) return null;
  return {
    field: fieldOf('stiffenerClearance'),
    message: words`The clearance is at most half the visor’s tip rounding, ${exactMm(visorTipRounding / 2)}; more would leave the stiffener a point.`,
    nearest: Math.floor(visorTipRounding) / 2,
  };
};

const insertTooBowed: Check = ({ visorSource, insertWidth, insertBow, stiffenerClearance, ease }, head) => {
  if (visorSource !== 'insert' || insertBow < insertWidth / 2) return null;
  return {
    field: fieldOf('insertBow'),
    message: words`The bow is less than half the width, ${mm(insertWidth / 2)}, in any insert that is a visor.`,
    nearest: Math.min(
      below(insertWidth / 2, 1),
      greatestBow(openingOf(head, ease).shell / 2, stiffenerClearance),
    ),
  };
};

/** The cover's inner edge is a little longer than the insert's: up to its clearance at either tip, and twice that where it is sharp. */
const coverEdge = (width: number, bow: number, clearance: number): number =>
  insertInnerEdge({ width, bow }) + 4 * clearance;

/** The greatest whole bow, mm, that leaves room for an insert of some width within half the head. */
const greatestBow = (half: number, clearance: number): number =>
  Math.max(0, Math.floor((half - 4 * clearance) / Math.PI - 1));

const insertTooLong: Check = (values, head) => {
  const { visorSource, insertWidth, insertBow, stiffenerClearance } = values;
  const half = openingOf(head, values.ease).shell / 2;
  if (visorSource !== 'insert' || insertBow >= insertWidth / 2) return null;
  if (coverEdge(insertWidth, insertBow, stiffenerClearance) <= half) return null;
  const message = words`The insert would go more than half-way round the head; half of this cap is ${mm(half)}.`;
  // Even a half circle of this bow is too long? Then no narrower insert will do.
  const limit = greatestBow(half, stiffenerClearance);
  if (insertBow > limit) return { field: fieldOf('insertBow'), message, nearest: limit };
  let nearest = Math.ceil(insertWidth) - 1;
  while (coverEdge(nearest, insertBow, stiffenerClearance) > half) nearest--;
  return { field: fieldOf('insertWidth'), message, nearest };
};

/** Only a row of widths can be misread so that the outer edge cuts into the inner one. */
const widthsCross: Check = (values, head) => {
  const { visorSource, insertWidth, insertDepth, insertBow, insertWidths } = values;
  if (visorSource !== 'insert' || insertWidths.length === 0) return null;
  if (insertTooBowed(values, head) || insertTooLong(values, head)) return null;
  if (!insertCrosses({ width: insertWidth, depth: insertDepth, bow: insertBow, widths: insertWidths }))
    return null;
  return {
    field: fieldOf('insertWidths'),
    message: words`With this bow the outer edge would cut into the inner one near the tips. Measure the bow and the widths again, at equal steps from the centre.`,
  };
};
