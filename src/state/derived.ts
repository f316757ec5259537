import { type Derived, derive } from '../design/derive.ts';
import type { Spec } from '../design/spec.ts';

const known = new WeakMap<Spec, Derived>();

/** What follows from a spec, worked out once for each spec. */
export const derived = (spec: Spec): Derived => {
  const before = known.get(spec);
  if (before) return before;
  const now = derive(spec);
  known.set(spec, now);
  return now;
};
