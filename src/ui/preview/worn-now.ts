import { isLined } from '../../caps/is-lined.ts';
import { liningOf } from '../../caps/lining-of.ts';
import { styleOf } from '../../caps/registry.ts';
import type { Spec } from '../../design/spec.ts';
import type { Pattern } from '../../pattern/pattern.ts';
import { drafted } from '../../state/derived.ts';
import { assemble } from '../../worn/assemble.ts';
import { putOn, type Worn } from '../../worn/put-on.ts';
import { seamLine } from '../../worn/seam-line.ts';
import type { Sheet } from '../../worn/sheet.ts';
import { trimmed } from '../../worn/trimmed.ts';
import type { SeamPath } from './ribbons.ts';

/** A cap as it is worn, with the pieces that it is made of. */
export interface WornNow extends Worn {
  readonly pattern: Pattern;
  /** How thick the outer cloth is, mm; 0 where it has not been measured. */
  readonly outer: number;
  readonly spec: Spec;
  readonly isLined: boolean;
  /** What lies within the shell; put on when it is first asked for. */
  readonly lining: () => readonly Sheet[];
}

let last: { readonly spec: Spec; readonly tilted: boolean; readonly worn: WornNow } | null = null;

/** The cap of a spec on the head of that spec; null where it cannot be drafted. The last one is kept. */
export const wornNow = (spec: Spec, tilted: boolean): WornNow | null => {
  if (last?.spec === spec && last.tilted === tilted) return last.worn;
  const draft = drafted(spec);
  if (draft === null) return null;
  const form = styleOf(spec.cap.style).form(draft.values, draft.head);
  const { pattern } = draft;
  const on = putOn(assemble(form, pattern.pieces), draft, draft.head, tilted);
  let lining: readonly Sheet[] | null = null;
  const worn: WornNow = {
    ...on,
    sheets: trimmed(on.sheets, pattern.pieces),
    pattern,
    outer: draft.turn.outer,
    spec,
    isLined: isLined(pattern),
    lining: () => {
      const own = liningOf(styleOf(spec.cap.style))?.form(draft.values, draft.head);
      lining ??= own ? on.line(assemble(own, pattern.pieces)) : NO_LINING;
      return lining;
    },
  };
  last = { spec, tilted, worn };
  return worn;
};

const NO_LINING: readonly Sheet[] = [];

/** A cap as one looks into it: its sheets with those of its lining, which from elsewhere are hidden. */
export const lookedInto = (worn: WornNow): WornNow => ({
  ...worn,
  sheets: [...worn.sheets, ...worn.lining()],
});

const NONE: readonly SeamPath[] = [];

/** Both sides of a seam on the head, those that stand in the sheets. */
export const seamOn = ({ sheets, pattern }: WornNow, id: string | null): readonly SeamPath[] => {
  const seam = id === null ? undefined : pattern.seams.find((one) => one.id === id);
  if (!seam) return NONE;
  return [seam.a, seam.b].flatMap((chain) => {
    const line = seamLine(sheets, pattern.pieces, chain);
    const within = sheets.some(({ piece, lining }) => lining && chain.some((use) => use.piece === piece));
    return line ? [{ points: line.points, within }] : [];
  });
};
