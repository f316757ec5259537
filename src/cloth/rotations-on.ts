import type { ClothSpec } from './cloth.ts';
import { shrinksAlike } from './shrinkage.ts';

/**
 * How pieces may be turned on a cloth, radians from their grain along its length: the other way round where there is no nap;
 * across and on the true bias where that is allowed.
 */
export const rotationsOn = (spec: ClothSpec): readonly number[] => {
  const eighth = Math.PI / 4;
  const ways = [
    0,
    ...(mayLieAcross(spec) ? [2 * eighth] : []),
    ...(mayLieOnBias(spec) ? [eighth, -eighth] : []),
  ];
  return spec.nap ? ways : [...ways, ...ways.map((turn) => turn + Math.PI)];
};

/** Whether pieces may lie off the grain that is drawn on them. */
export const mayTurn = (spec: ClothSpec): boolean => mayLieAcross(spec) || mayLieOnBias(spec);

/** A piece that is cut larger for the wash is so along its own grain and across: turned, it would shrink to another shape. */
export const mayLieAcross = (spec: ClothSpec): boolean => spec.cross && !spec.nap && shrinksAlike(spec);

const mayLieOnBias = (spec: ClothSpec): boolean => spec.bias && shrinksAlike(spec);

/** Which of these turns this is; -1 for none of them. */
export const turnAmong = (rotations: readonly number[], rotation: number): number =>
  rotations.findIndex((turn) => Math.abs(turn - rotation) < 1e-6);
