import { styleOf } from '../../caps/registry.ts';
import type { Spec } from '../../design/spec.ts';
import type { Point3 } from '../../geometry/space.ts';
import type { Pattern } from '../../pattern/pattern.ts';
import { derived } from '../../state/derived.ts';
import { assemble } from '../../worn/assemble.ts';
import { putOn, type Worn } from '../../worn/put-on.ts';
import { seamLine } from '../../worn/seam-line.ts';
import { trimmed } from '../../worn/trimmed.ts';

/** A cap as it is worn, with the pieces that it is made of. */
export interface WornNow extends Worn {
  readonly pattern: Pattern;
  /** How thick the outer cloth is, mm; 0 where it has not been measured. */
  readonly outer: number;
  readonly spec: Spec;
}

let last: { readonly spec: Spec; readonly tilted: boolean; readonly worn: WornNow } | null = null;

/** The cap of a spec on the head of that spec; null where it cannot be drafted. The last one is kept. */
export const wornNow = (spec: Spec, tilted: boolean): WornNow | null => {
  if (last?.spec === spec && last.tilted === tilted) return last.worn;
  const { draft } = derived(spec);
  if (draft === null) return null;
  const form = styleOf(spec.cap.style).form(draft.values, draft.head);
  const { pattern } = draft;
  const on = putOn(assemble(form, pattern.pieces), draft, draft.head, tilted);
  const worn = { ...on, sheets: trimmed(on.sheets, pattern.pieces), pattern, outer: draft.turn.outer, spec };
  last = { spec, tilted, worn };
  return worn;
};

const NONE: readonly (readonly Point3[])[] = [];

/** Both sides of a seam on the head, those that stand in the shell. */
export const seamOn = ({ sheets, pattern }: WornNow, id: string | null): readonly (readonly Point3[])[] => {
  const seam = id === null ? undefined : pattern.seams.find((one) => one.id === id);
  if (!seam) return NONE;
  return [seam.a, seam.b].flatMap((chain) => {
    const line = seamLine(sheets, pattern.pieces, chain);
    return line ? [line.points] : [];
  });
};
