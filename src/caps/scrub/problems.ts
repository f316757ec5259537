import type { Problem } from '../../pattern/problem.ts';
import { mm, words } from '../../words.ts';
import { openingOf } from '../opening.ts';
import { crownTooLow, endTooWide } from '../parts/top-and-sides/problems.ts';
import type { Head } from '../style.ts';
import { checkValues, fieldOf } from '../validate.ts';
import { CASING_ROOM, drawnIn } from './casing.ts';
import { scrubOpening, scrubProfile } from './crown.ts';
import { type ScrubValues, scrubParameters } from './parameters.ts';

/** The widest strip, as a share of the opening's breadth. */
const WIDEST_STRIP = 0.85;

/** What of a wished scrub cap cannot be sewn or worn, each with the nearest value that can. */
export const scrubProblems = (values: ScrubValues, head: Head): readonly Problem[] => {
  const outOfRange = checkValues(scrubParameters, values);
  if (outOfRange.length > 0) return outOfRange;
  const { shell, inner } = openingOf(head, values.ease);
  const tooWide = endTooWide('stripWidth', values.stripWidth, WIDEST_STRIP, {
    ...head,
    girth: shell,
  });
  return [
    ...tooWide,
    ...(tooWide.length > 0 ? [] : tooLow(values, head)),
    ...elasticTooLong(values, inner),
    ...tieTooWide(values),
  ];
};

const tooLow = (values: ScrubValues, head: Head): readonly Problem[] => {
  const opening = scrubOpening(values, head);
  const { crownHeight, stripWidth: topWidth } = values;
  return crownTooLow(
    { crownHeight, topWidth, opening, profileOf: (height) => scrubProfile(height, opening) },
    head.arc,
  );
};

/** Elastic draws in only what is longer than itself: at its laxest it is stretched by a twentieth. */
const LEAST_STRETCH = 1.05;

const elasticTooLong = ({ backTie, elasticLength }: ScrubValues, girth: number): readonly Problem[] => {
  const limit = drawnIn(girth) / LEAST_STRETCH;
  if (backTie !== 'elastic' || elasticLength <= limit) return [];
  return [
    {
      field: fieldOf('elasticLength'),
      message: words`The back of the casing is ${mm(drawnIn(girth))} long: elastic of that length would not draw it in.`,
      nearest: Math.floor(limit / 5) * 5,
    },
  ];
};

const tieTooWide = ({ backTie, tieWidth, casingHeight }: ScrubValues): readonly Problem[] => {
  if (backTie !== 'ties' || tieWidth + CASING_ROOM <= casingHeight) return [];
  return [
    {
      field: fieldOf('tieWidth'),
      message: words`The ties must slip through the casing, ${mm(casingHeight)} high.`,
      nearest: Math.floor(casingHeight - CASING_ROOM),
    },
  ];
};
