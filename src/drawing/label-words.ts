import { FOLD_EDGE } from '../pattern/fold-edge.ts';
import type { Allowances } from '../pattern/pattern.ts';
import type { Piece, SeamKind } from '../pattern/piece.ts';
import { formatAllowance, formatLength, type Unit } from '../units.ts';
import { say } from '../words.ts';
import { cutWords } from './cut-words.ts';

/** What every piece of one pattern says besides what it is. `finishedGirth` in mm, `date` as 2026-11-25. */
export interface LabelFacts {
  readonly cap: string;
  readonly wearer: string;
  readonly finishedGirth: number;
  readonly date: string;
}

/** A piece's label: its name, and the phrases below it, none of which should be broken if it can be helped. */
export interface LabelWords {
  readonly title: string;
  readonly phrases: readonly string[];
  /** Told where there is room: the sewing order repeats them. */
  readonly notes: readonly string[];
}

const seamNames: Readonly<Record<Exclude<SeamKind, 'none'>, string>> = {
  crown: 'top',
  gore: 'long seams',
  side: 'sides',
  band: 'band',
  lower: 'lower edge',
  visorEdge: 'visor edge',
  brimEdge: 'brim edge',
  strapEdge: 'strap edge',
  hem: 'hem',
};

export const labelWords = (
  piece: Piece,
  allowances: Allowances,
  facts: LabelFacts | null,
  onFold: boolean,
  unit: Unit,
): LabelWords => {
  const cuts = piece.cuts.map((c) => `${cutWords(c)}${onFold ? ' on the fold' : ''}`);
  if (!facts) return { title: piece.name, phrases: cuts, notes: [] };
  return {
    title: piece.name,
    phrases: [
      ...[facts.cap, facts.wearer === '' ? '' : `For ${facts.wearer}`].filter((s) => s !== ''),
      ...cuts,
      piece.cuts.length > 0 ? allowanceWords(piece, allowances, unit) : 'Nothing to cut',
      `Finished girth ${formatLength(facts.finishedGirth, unit)}`,
      dateWords(facts.date),
    ],
    notes: piece.notes.map((note) => say(note, unit).replace(/\.$/, '')),
  };
};

/** How much is added and where. Edges without allowance are told when others have one. */
const allowanceWords = (piece: Piece, allowances: Allowances, unit: Unit): string => {
  const kinds = [...new Set(piece.outline.filter((e) => e.name !== FOLD_EDGE).map((e) => e.kind))];
  const added = kinds.filter((k): k is Exclude<SeamKind, 'none'> => k !== 'none' && allowances[k] > 0);
  if (added.length === 0) return 'No seam allowance: cut on the line';
  const widths = [...new Set(added.map((k) => formatAllowance(allowances[k], unit)))];
  const elsewhere = added.length < kinds.length ? ', none elsewhere' : '';
  if (widths.length === 1) return `Seam allowance ${widths[0]} included${elsewhere}`;
  const each = added.map((k) => `${seamNames[k]} ${formatAllowance(allowances[k], unit)}`);
  return `Seam allowance included: ${each.join(', ')}${elsewhere}`;
};

const MONTHS = 'Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec'.split(' ');

/** A date as people write it, from 2026-11-25 (or longer): 25 Nov 2026. Anything else is passed on as it is. */
export const dateWords = (iso: string): string => {
  const [, year, month, day] = /^(\d{4})-(\d{2})-(\d{2})/.exec(iso) ?? [];
  const name = MONTHS[Number(month) - 1];
  return name === undefined ? iso : `${Number(day)} ${name} ${year}`;
};
