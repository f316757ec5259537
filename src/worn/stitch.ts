import type { Sheet } from './sheet.ts';

/** What is stitched on a sheet, for the picture: nothing, an edge stitch beside both rails, rows from the right rail on, cloth drawn up at its right rail, or the rim of a hole. */
export type Stitch = 0 | 1 | 2 | 3 | 4;

/** What is sewn on is a likeness, and yet nothing is drawn up in it. */
const SEWN_ON: readonly string[] = ['strap', 'backStrap'];

/** What gathers or pleats are laid in: only that is likened because cloth is drawn up. */
const DRAWN_UP: readonly string[] = ['sideBand', 'tip'];

/** Crown seams are edge-stitched, visors and brims in rows, as is common practice. */
export const stitchOf = ({ open, likeness, piece, disc }: Sheet): Stitch => {
  if (disc) return disc === 'eyelet' ? 4 : 0;
  if (SEWN_ON.includes(piece)) return 1;
  if (open) return 2;
  return likeness && DRAWN_UP.some((name) => piece.startsWith(name)) ? 3 : 1;
};

/** One disc goes over the rim of the crown and is drawn up below it: there is no seam at that rim. */
export const isOverRim = ({ likeness, piece }: Sheet): boolean => likeness && piece === 'tip';
