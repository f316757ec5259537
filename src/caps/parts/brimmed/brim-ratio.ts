import type { Head } from '../../style.ts';
import type { BrimValues } from '../brim/parameters.ts';

/** Breadth by length of the opening that a brim is drawn on. */
export const brimRatio = ({ brimShape }: Pick<BrimValues, 'brimShape'>, { ratio }: Head): number =>
  brimShape === 'oval' ? ratio : 1;
