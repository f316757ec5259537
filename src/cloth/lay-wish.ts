import type { Pattern } from '../pattern/pattern.ts';
import type { Cloth } from '../pattern/piece.ts';
import type { ClothSpec } from './cloth.ts';

/** A cap of a lay: its pieces as they are cut, and how many are made of it. */
export interface LayCap {
  readonly name: string;
  readonly cutting: Pattern;
  readonly count: number;
}

/** Which caps are cut together from which cloth. */
export interface LayWish {
  readonly caps: readonly LayCap[];
  readonly cloth: Cloth;
  readonly spec: ClothSpec;
}
