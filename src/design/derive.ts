import { flatTop } from '../caps/flat-top/flat-top.ts';
import type { CapDraft } from '../caps/style.ts';
import { checkValues } from '../caps/validate.ts';
import { headRatio } from '../head/head-ratio.ts';
import { judgeGirth, meanGirth } from '../head/girth.ts';
import type { Problem } from '../pattern/problem.ts';
import { checkSeams, type SeamReport } from '../pattern/seam-check.ts';
import type { Spec } from './spec.ts';

/** Everything that follows from a spec. */
export interface Draft extends CapDraft {
  readonly spec: Spec;
  readonly headGirth: number;
  readonly seams: readonly SeamReport[];
}

export interface Derived {
  readonly problems: readonly Problem[];
  /** Null where a problem stands in the way. */
  readonly draft: Draft | null;
}
