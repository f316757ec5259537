import { styleOf } from '../../caps/registry.ts';
import type { Draft } from '../../design/draft.ts';
import type { Picture } from '../../drawing/steps/shown.ts';
import { stepDrawing } from '../../drawing/steps/step-drawing.ts';
import type { Term } from '../../guide/glossary.ts';
import { type Guide, guideOf } from '../../guide/guide.ts';
import { joinedIn } from '../../guide/joined.ts';
import type { Step } from '../../guide/step.ts';
import { termsOf } from '../../guide/terms.ts';
import type { Work } from '../../guide/work.ts';

/** The order of work of a draft, with the drawing and the new words of each step. */
export interface GuideNow {
  readonly work: Work;
  readonly guide: Guide;
  readonly terms: readonly (readonly Term[])[];
  /** Drawn when it is asked for, once. */
  readonly pictureOf: (step: Step) => Picture | null;
}

export const guideNow = (draft: Draft): GuideNow => {
  const { values, pattern, cutting, finishedGirth, seams, spec, head } = draft;
  const work: Work = { values, pattern, cutting, finishedGirth, seams, cloths: spec.cloths };
  const guide = guideOf(work);
  const joined = joinedIn(guide.steps, pattern.seams);
  const form = styleOf(spec.cap.style).form(values, head);
  const drawn = new Map<string, Picture | null>();
  const draw = (step: Step): Picture | null =>
    stepDrawing(
      {
        show: step.show,
        pieces: step.pieces,
        seams: step.seams,
        facing: step.facing,
        onTop: step.onTop,
        press: step.settings.press ?? null,
        topstitched: step.settings.topstitch !== undefined,
        rows: [...step.rows, ...step.held],
        ...joined[guide.steps.indexOf(step)]!,
        form,
      },
      pattern,
    );
  return {
    work,
    guide,
    terms: termsOf(guide.steps),
    pictureOf: (step) => {
      const before = drawn.get(step.id);
      if (before !== undefined) return before;
      const now = draw(step);
      drawn.set(step.id, now);
      return now;
    },
  };
};
