import type { ClothSpec } from './cloth.ts';

/** How much longer and broader a piece is cut, so that it has its size once the cloth has shrunk: 1/(1 − s) each way. */
export const growthOf = ({
  washed,
  shrinkLength,
  shrinkWidth,
}: Pick<ClothSpec, 'washed' | 'shrinkLength' | 'shrinkWidth'>): {
  readonly along: number;
  readonly across: number;
} => (washed ? { along: 1, across: 1 } : { along: 1 / (1 - shrinkLength), across: 1 / (1 - shrinkWidth) });

/** Cloth that loses more than this is no cloth to sew unwashed, parts of one. */
export const MOST_SHRINKAGE = 0.2;
