import type { Draft } from '../../design/draft.ts';
import { forAChild } from '../../guide/for-a-child.ts';
import { settingLines } from '../../guide/settings-words.ts';
import { timeWords } from '../../guide/time.ts';
import type { BookletContent } from '../../print/booklet/booklet.ts';
import type { Unit } from '../../units.ts';
import { headingOf } from '../heading-of.ts';
import { today } from '../today.ts';
import type { GuideNow } from './guide-now.ts';

/** The order of work of a draft, as it is printed. */
export const bookletContent = (
  draft: Draft,
  { guide, terms, pictureOf, work }: GuideNow,
  unit: Unit,
): BookletContent => ({
  heading: headingOf(draft, unit, today()),
  steps: guide.steps.map((step, i) => ({
    step,
    picture: pictureOf(step),
    settings: settingLines(work, step, unit),
    terms: terms[i]!,
  })),
  tools: guide.tools,
  notions: guide.notions,
  time: timeWords(guide.minutes),
  forAChild,
});
