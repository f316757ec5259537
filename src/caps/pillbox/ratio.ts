import type { Head } from '../style.ts';
import type { PillboxValues } from './parameters.ts';

/** Breadth by length of the opening that a pillbox is drawn on. */
export const ratioOf = ({ tipShape }: Pick<PillboxValues, 'tipShape'>, { ratio }: Head): number =>
  tipShape === 'oval' ? ratio : 1;
