import { type Draft, draftOf, judge } from '../../src/design/draft.ts';
import type { Spec } from '../../src/design/spec.ts';
import type { Problem } from '../../src/pattern/problem.ts';

/** What stands in the way of a spec, and its draft where nothing does. */
export const derive = (
  spec: Spec,
): { readonly problems: readonly Problem[]; readonly draft: Draft | null } => {
  const { problems, given } = judge(spec);
  return { problems, draft: given && draftOf(given) };
};
