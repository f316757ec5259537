import type { Piece, SeamKind } from './piece.ts';
import type { Seam } from './seam.ts';

/** Seam allowance width (mm) by kind of seam. */
export type Allowances = Readonly<Record<SeamKind, number>>;

/** Every piece of one cap, how they join, and how much is added outside the stitch line. */
export interface Pattern {
  readonly pieces: readonly Piece[];
  readonly seams: readonly Seam[];
  readonly allowances: Allowances;
}
