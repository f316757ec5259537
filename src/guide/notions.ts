import { isLined } from '../caps/is-lined.ts';
import { boxOf } from '../geometry/box.ts';
import { flatten } from '../geometry/flatten.ts';
import { PLACING } from '../geometry/tolerance.ts';
import { cutLine } from '../pattern/cut-line.ts';
import type { Pattern } from '../pattern/pattern.ts';
import type { Notion, Piece } from '../pattern/piece.ts';
import { mm, words } from '../words.ts';
import type { Work } from './work.ts';

/** What a cap takes besides cloth and thread: what its pieces name, and what its seams ask for. */
export const notionsOf = (work: Pick<Work, 'pattern' | 'cutting' | 'seams'>): readonly Notion[] => [
  ...work.pattern.pieces.flatMap((piece) =>
    (piece.notions ?? []).map((notion) => (notion.inPlace ? asCut(notion, piece, work.cutting) : notion)),
  ),
  ...tape(work),
];

/** What is bought in place of a piece is as long as that is cut: with its allowances and what the wash takes. */
const asCut = ({ size, ...notion }: Notion, { id }: Piece, { pieces, allowances }: Pattern): Notion => {
  const piece = pieces.find((one) => one.id === id)!;
  const { min, max } = boxOf(flatten(cutLine(piece, allowances).flat(), PLACING));
  return { ...notion, size: words`${mm(max.x - min.x)} long${size === undefined ? '' : words`, ${size}`}` };
};

/** A strip of tape is longer than its seam by this, for its two ends and what the wash takes, mm (our own measure). */
const ENDS = 25;
/** It lies so far over either raw edge of a seam that is pressed open, mm (our own measure). */
const OVER = 3;

/** Tape over the gore seams, where no lining hides them. */
const tape = ({ pattern, seams }: Pick<Work, 'pattern' | 'seams'>): readonly Notion[] => {
  const open = isLined(pattern) ? [] : seams.filter(({ seam }) => seam.kind === 'gore');
  if (open.length === 0) return [];
  const long = open.reduce((sum, { a, b }) => sum + Math.max(a, b) + ENDS, 0);
  const wide = 2 * (pattern.allowances.gore + OVER);
  return [{ name: 'Bias tape for the seams inside', size: words`${mm(long)} long, ${mm(wide)} wide` }];
};
