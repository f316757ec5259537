import type { Placement } from '../nesting/task.ts';
import type { ClothSpec } from './cloth.ts';
import type { LayPiece } from './lay-pieces.ts';
import { turnAmong } from './rotations-on.ts';

/** Of what a hand has put down, what is still cut, has its scrap still there and may still be turned so. */
export const pinsThatLie = (
  pins: readonly Placement[],
  pieces: readonly LayPiece[],
  { scraps }: ClothSpec,
): readonly Placement[] => {
  const grounds = Math.max(1, scraps.length);
  return pins.filter(
    ({ piece, container, rotation }) =>
      container < grounds &&
      pieces.some(({ id, rotations }) => id === piece && turnAmong(rotations, rotation) >= 0),
  );
};
