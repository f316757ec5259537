import type { Piece } from '../../../pattern/piece.ts';
import type { EdgeUse, Seam } from '../../../pattern/seam.ts';

/** The fastening of an opening at the back: its pieces and seams, and how it closes the cap's lower edge. */
export interface Fastening {
  readonly pieces: readonly Piece[];
  readonly seams: readonly Seam[];
  /** The way across the opening along the lower edge, with the cap at its finished girth, on either layer of the strap. */
  readonly outer: Across;
  readonly inner: Across;
}

/** Counter-clockwise from above: from the centre back to the wearer's right end of the opening, and from the left end to the centre back. */
export interface Across {
  readonly toRight: EdgeUse;
  readonly fromLeft: EdgeUse;
}
