import type { Figure } from '../../../pattern/piece.ts';
import { exactMm, ratio, words } from '../../../words.ts';
import { elasticCasing } from './elastic-casing.ts';
import type { Fastening } from './fastening.ts';
import type { BackStrapValues } from './parameters.ts';
import { strapHalves } from './strap-halves.ts';

/**
 * How much further round the crown is cut than the finished girth, mm. A strap draws it in by this much and can let it out again;
 * an elastic is cut short instead: a cap that has one is at its finished girth with the elastic stretched flat.
 */
export const roomOf = ({ backFastening, backRoom }: BackStrapValues): number =>
  backFastening === 'strap' ? backRoom : 0;

/**
 * The fastening of an opening of a width, mm, measured along the lower edge as it is cut. What closes the edge inside goes
 * `within` of the way round of what closes it outside: a strap's inner layer lies the nearer to the head.
 */
export const backStrap = (values: BackStrapValues, openingWidth: number, within = 1): Fastening =>
  (values.backFastening === 'strap' ? strapHalves : elasticCasing)(values, openingWidth, within);

/** How far round the cap is at the other end of what its fastening gives. mm. */
export const reachOfFastening = (
  values: BackStrapValues,
  finished: number,
  openingWidth: number,
): { readonly girth: number; readonly figure: Figure } => {
  const { backFastening, backRoom, elasticStretch } = values;
  if (backFastening === 'strap') {
    const girth = finished + backRoom;
    return {
      girth,
      figure: {
        name: 'Girth with the strap let out',
        formula: 'finished girth + room to let out',
        worked: words`${exactMm(finished)} + ${exactMm(backRoom)} = ${exactMm(girth)}`,
      },
    };
  }
  const girth = finished - openingWidth * elasticStretch;
  return {
    girth,
    figure: {
      name: 'Girth with the elastic at rest',
      formula: 'finished girth − opening width × elastic shorter by',
      worked: words`${exactMm(finished)} − ${exactMm(openingWidth)} × ${ratio(elasticStretch)} = ${exactMm(girth)}`,
    },
  };
};
