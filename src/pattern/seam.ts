import type { SeamKind } from './piece.ts';

/**
 * An edge of one copy of a piece, as it takes part in a seam.
 * `backwards` where it is walked against the outline's direction; `from` and `to` (mm along the edge as walked)
 * where only a stretch of it is sewn.
 */
export interface EdgeUse {
  readonly piece: string;
  readonly copy: number;
  readonly edge: string;
  readonly backwards?: boolean;
  readonly from?: number;
  readonly to?: number;
}

/**
 * Two chains of edges sewn together; a pattern lists its seams in sewing order.
 * `ease` is the stated ratio b/a − 1 of a gathered or eased seam; 0 is a plain seam.
 * A `ring` goes all the way round, so that its end is its start.
 */
export interface Seam {
  readonly id: string;
  readonly name: string;
  readonly kind: SeamKind;
  readonly a: readonly EdgeUse[];
  readonly b: readonly EdgeUse[];
  readonly ease: number;
  readonly ring?: boolean;
}
