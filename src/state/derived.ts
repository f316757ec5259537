import { type Draft, draftOf, type Judged, judge } from '../design/draft.ts';
import type { Spec } from '../design/spec.ts';

const onceForEach = <T>(work: (spec: Spec) => T): ((spec: Spec) => T) => {
  const known = new WeakMap<Spec, { readonly outcome: T }>();
  return (spec) => {
    const before = known.get(spec);
    if (before) return before.outcome;
    const outcome = work(spec);
    known.set(spec, { outcome });
    return outcome;
  };
};

/** What stands in the way of a spec, or what it is drafted from; judged once for each spec. */
export const judged: (spec: Spec) => Judged = onceForEach(judge);

export const canBeSewn = (spec: Spec): boolean => judged(spec).given !== null;

/** The cap of a spec, drafted once for each; null where it cannot be sewn. */
export const drafted: (spec: Spec) => Draft | null = onceForEach((spec) => {
  const { given } = judged(spec);
  return given && draftOf(given);
});
