import type { Strip } from '../geometry/strip.ts';

/** One copy of a shell piece as it stands on the head: the strip in space that it is rolled out from. */
export interface FormStrip {
  /** The piece's id, and which of its copies this is. */
  readonly piece: string;
  readonly copy: number;
  readonly strip: Strip;
  /** Its other face is seen too: a visor, a brim. */
  readonly open?: true;
  /** Stands for something bought, or for cloth that gathers draw in, as near as its measures tell: the piece is not rolled out from it. */
  readonly likeness?: true;
}

/**
 * The shell of a cap in space, mm: x to the wearer's right, y to the front, z up from the level of the cap's lower edge.
 * Strips that are sewn together share their rail, or its end rulings.
 */
export interface Form {
  readonly strips: readonly FormStrip[];
}
