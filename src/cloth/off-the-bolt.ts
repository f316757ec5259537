import type { ClothSpec } from './cloth.ts';
import { washGrowth } from './shrinkage.ts';

/** A cloth of which as much as is needed comes off the bolt: as wide as it is at hand, or from a bolt of some width, mm, that is washed if it was. */
export const offTheBolt = (spec: ClothSpec, bolt: number | null = null): ClothSpec => ({
  ...spec,
  width: bolt === null ? spec.width : bolt / washGrowth(spec).across,
  length: null,
  scraps: [],
});
