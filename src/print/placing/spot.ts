import type { Turn } from '../turned.ts';

/** Where a piece's turned box has its upper left corner, mm right of and below the first sheet's. */
export interface Spot {
  readonly turn: Turn;
  readonly left: number;
  readonly top: number;
}
