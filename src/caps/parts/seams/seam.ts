import type { SeamKind } from '../../../pattern/piece.ts';
import type { EdgeUse, Seam } from '../../../pattern/seam.ts';

/** One edge of one copy of a piece, walked along its outline. */
export const one = (piece: string, edge: string, copy = 0): EdgeUse => ({ piece, copy, edge });

/** The same edge walked against the outline. */
export const back = (piece: string, edge: string, copy = 0): EdgeUse => ({
  ...one(piece, edge, copy),
  backwards: true,
});

/** A seam whose two sides are equally long. */
export const plain = (
  id: string,
  name: string,
  kind: SeamKind,
  a: readonly EdgeUse[],
  b: readonly EdgeUse[],
): Seam => ({ id, name, kind, a, b, ease: 0 });

/** A plain seam that goes all the way round. */
export const ring = (...seam: Parameters<typeof plain>): Seam => ({ ...plain(...seam), ring: true });

/**
 * A seam of two layers going round, the second inside the first: shorter by what goes round of the cloth between them, so that
 * one is stretched or the other eased by so much. Girths in mm; a plain seam where they are the same.
 */
export const inside = (seam: Seam, girth: number, insideGirth: number): Seam => ({
  ...seam,
  ease: insideGirth / girth - 1,
});
