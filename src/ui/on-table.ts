import type { Spec } from '../design/spec.ts';
import { arrange, type Placed } from '../drawing/arrange.ts';
import { drawPattern } from '../drawing/draw-piece.ts';
import { derived } from '../state/derived.ts';
import type { Unit } from '../units.ts';

const drawn: Readonly<Record<Unit, WeakMap<Spec, readonly Placed[]>>> = {
  cm: new WeakMap(),
  in: new WeakMap(),
};

/** The pieces of a spec as they lie on the table, drawn once for each spec and unit. */
export const onTable = (spec: Spec, unit: Unit): readonly Placed[] => {
  const before = drawn[unit].get(spec);
  if (before) return before;
  const { draft } = derived(spec);
  if (draft === null) return [];
  const now = arrange(drawPattern(draft.pattern, { unit, halves: false, dimensions: true, label: null }));
  drawn[unit].set(spec, now);
  return now;
};
