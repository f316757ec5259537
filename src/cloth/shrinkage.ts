import type { ClothSpec } from './cloth.ts';

/** How many times longer and broader a piece is cut than sewn, along its grain and across. */
export interface Growth {
  readonly along: number;
  readonly across: number;
}

export const NO_GROWTH: Growth = { along: 1, across: 1 };

type Shrinkage = Pick<ClothSpec, 'washed' | 'shrinkLength' | 'shrinkWidth'>;

/** What gives a piece its size once the cloth has shrunk by a part s: 1/(1 − s) each way. Washed cloth has shrunk already. */
export const growthOf = ({ washed, shrinkLength, shrinkWidth }: Shrinkage): Growth =>
  washed ? NO_GROWTH : { along: 1 / (1 - shrinkLength), across: 1 / (1 - shrinkWidth) };

/** How many times longer and broader cloth is bought than it is when it is cut: in between it may be washed. */
export const washGrowth = (spec: Shrinkage): Growth =>
  spec.washed ? growthOf({ ...spec, washed: false }) : NO_GROWTH;

/** By how much more one of two cloths shrinks than the other, along or across, whichever is more: parts of one. */
export const shrinkageApart = (one: Shrinkage, other: Shrinkage): number => {
  const [a, b] = [growthOf(one), growthOf(other)];
  return Math.max(Math.abs(1 / a.along - 1 / b.along), Math.abs(1 / a.across - 1 / b.across));
};

/** Whether the wash takes as much along as across, so that it does not matter how a piece lies. Washed cloth has shrunk already. */
export const shrinksAlike = (spec: Shrinkage): boolean => {
  const { along, across } = growthOf(spec);
  return along === across;
};

/** Cloth that loses more than this is no cloth to sew unwashed, parts of one. */
export const MOST_SHRINKAGE = 0.2;
