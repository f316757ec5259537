import type { Chalks } from './chalks.ts';

/** What the look of a drawing hangs on besides itself. */
export interface Look {
  readonly chalks: Chalks;
  /** Pixels per mm. */
  readonly scale: number;
}
