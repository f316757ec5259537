import type { ClothSpec } from './cloth.ts';

/** Whether a cloth is laid double: scraps never are. */
export const liesFolded = ({ folded, scraps }: Pick<ClothSpec, 'folded' | 'scraps'>): boolean =>
  folded && scraps.length === 0;
