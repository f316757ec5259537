import type { Sheet } from './sheet.ts';

/** What is stitched on a sheet, for the picture: nothing, an edge stitch beside both rails, rows from the right rail on, or cloth drawn up at its rails. */
export type Stitch = 0 | 1 | 2 | 3;

/** Crown seams are edge-stitched, visors and brims in rows, as is common practice. */
export const stitchOf = ({ open, likeness, piece }: Sheet): Stitch => {
  if (open) return likeness && !piece.startsWith('visor') ? 1 : 2;
  if (piece === 'topButton') return 0;
  return likeness ? 3 : 1;
};
