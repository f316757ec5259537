import type { Head } from '../../style.ts';
import type { BrimValues } from '../brim/parameters.ts';
import { brimJoints } from '../brim/sections.ts';

/** Breadth by length of the opening that a brim is drawn on. */
export const brimRatio = ({ brimShape }: Pick<BrimValues, 'brimShape'>, { ratio }: Head): number =>
  brimShape === 'oval' ? ratio : 1;

/** Where a brim's seams fall between the quarters of a crown, in parts of the girth from the centre back. */
export const seamsOffQuarters = (values: BrimValues): readonly number[] =>
  brimJoints(values).filter((at) => !Number.isInteger(at * 4));
