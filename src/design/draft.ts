import { rowsOf, type Values } from '../caps/parameter.ts';
import { styleOf } from '../caps/registry.ts';
import type { CapDraft, Head } from '../caps/style.ts';
import { clothProblems } from '../cloth/cloth-problems.ts';
import { cutPattern } from '../cloth/grown.ts';
import { type TurnOfCloth, turnOfCloth } from '../cloth/turn-of-cloth.ts';
import { judgeGirth, meanGirth } from '../head/girth.ts';
import { headArc } from '../head/head-arc.ts';
import { headRatio } from '../head/head-ratio.ts';
import { wrongArc, wrongRatio } from '../head/possible-shape.ts';
import type { Pattern } from '../pattern/pattern.ts';
import type { Problem } from '../pattern/problem.ts';
import { checkSeams, type SeamReport } from '../pattern/seam-check.ts';
import type { HeadSpec, Spec } from './spec.ts';

/** What a style drafts a spec from. */
export interface Given {
  readonly spec: Spec;
  /** What the style looks at. */
  readonly values: Values;
  readonly head: Head;
  readonly turn: TurnOfCloth;
}

/** Everything that follows from a spec. */
export interface Draft extends CapDraft, Given {
  /** The pieces as they are cut: larger than they are sewn where the cloth will shrink. */
  readonly cutting: Pattern;
  readonly seams: readonly SeamReport[];
}

export interface Judged {
  readonly problems: readonly Problem[];
  /** Null where a problem stands in the way. */
  readonly given: Given | null;
}

/** From what the user chose to what a style drafts from, or what stands in the way: far quicker than a draft. */
export const judge = (spec: Spec): Judged => {
  // Is there a head?
  const girth = meanGirth(spec.head.readings);
  const headProblems = problemsOfHead(girth, spec);
  if (girth === null || headProblems.length > 0) return { problems: headProblems, given: null };

  const wrongCloths = clothProblems(spec.cloths);
  if (wrongCloths.length > 0) return { problems: wrongCloths, given: null };

  // Can this cap be sewn?
  const style = styleOf(spec.cap.style);
  const values = rowsOf(style.parameters, spec.cap.values);
  const turn = turnOfCloth(spec.cloths, style.inside(values));
  const head: Head = { ...headOf(girth, spec.head), turn };
  const problems = style.problems(values, head);
  return { problems, given: problems.length > 0 ? null : { spec, values, head, turn } };
};

/** Everything that follows: the style's rule, its pieces as they are cut, and whether their seams meet. */
export const draftOf = (given: Given): Draft => {
  const { spec, values, head } = given;
  const draft = styleOf(spec.cap.style).draft(values, head);
  const cutting = cutPattern(draft.pattern, spec.cloths);
  return { ...draft, ...given, cutting, seams: checkSeams(draft.pattern) };
};

/** What styles know of a head whose girth is known. */
const headOf = (girth: number, spec: HeadSpec): Head => ({
  girth,
  ratio: headRatio(spec),
  arc: headArc(spec.arc, girth),
});

const problemsOfHead = (girth: number | null, { head, unit }: Spec): readonly Problem[] => {
  const judged = judgeGirth(girth ?? Number.NaN, unit);
  if (judged.kind === 'error') {
    return [
      {
        field: 'head.girth',
        message: judged.message,
        ...(judged.likely === undefined ? {} : { nearest: judged.likely }),
      },
    ];
  }
  return [...problemsOfOval(head), ...problemsOfArc(head.arc, girth)];
};

const problemsOfOval = (head: HeadSpec): readonly Problem[] => {
  const message = wrongRatio(headRatio(head));
  return message === null ? [] : [{ field: 'head.breadth', message }];
};

const problemsOfArc = (arc: number | null, girth: number | null): readonly Problem[] => {
  const wrong = arc === null ? null : wrongArc(arc, girth);
  return wrong === null ? [] : [{ field: 'head.arc', ...wrong }];
};
