import { isRound } from '../../../geometry/oval.ts';
import { parallelGirth } from '../../../geometry/oval-parallel.ts';
import type { Figure } from '../../../pattern/piece.ts';
import { count, exactMm, mm, radians, words } from '../../../words.ts';
import type { Fact } from '../../style.ts';
import { type BrimSlope, outerGirth } from './brim-slope.ts';

/** The arithmetic of a brim's ring, cut in some number of pieces. */
export const brimFigures = (slope: BrimSlope, pieces: number): readonly Figure[] => {
  const { opening, width, drop } = slope;
  const girth = parallelGirth(opening);
  const cosine = Math.cos(drop);
  if (isRound(opening.oval)) {
    const inner = girth / (2 * Math.PI * cosine);
    return [
      {
        name: 'Radius of the inner edge',
        formula: 'girth of the opening ÷ 2π ÷ cosine of the drop',
        worked: words`${exactMm(girth)} ÷ 6.2832 ÷ cos ${radians(drop)} = ${exactMm(inner)}`,
      },
      {
        name: 'Radius of the outer edge',
        formula: 'radius of the inner edge + brim width',
        worked: words`${exactMm(inner)} + ${exactMm(width)} = ${exactMm(inner + width)}`,
      },
      {
        name: 'Angle of one piece',
        formula: '360° × cosine of the drop ÷ number of pieces',
        worked: words`${radians(2 * Math.PI)} × cos ${radians(drop)} ÷ ${count(pieces)} = ${radians((2 * Math.PI * cosine) / pieces)}`,
      },
      outerFigure(slope),
    ];
  }
  const { oval, out } = opening;
  const front = oval.halfBreadth ** 2 / oval.halfLength + out;
  return [
    {
      name: 'Flat radius of the inner edge at the centre front',
      formula: 'radius of the opening there ÷ cosine of the drop',
      worked: words`${exactMm(front)} ÷ cos ${radians(drop)} = ${exactMm(front / cosine)}`,
    },
    outerFigure(slope),
  ];
};

const outerFigure = (slope: BrimSlope): Figure => {
  const { opening, width, drop } = slope;
  return {
    name: 'Round the outer edge',
    formula: 'girth of the opening + 2π × brim width × cosine of the drop',
    worked: words`${exactMm(parallelGirth(opening))} + 6.2832 × ${exactMm(width)} × cos ${radians(drop)} = ${exactMm(outerGirth(slope))}`,
  };
};

/** What stands in plain sight of a brim: how far round its edge is. */
export const brimFact = (slope: BrimSlope): Fact => ({
  id: 'brim',
  name: 'Brim edge',
  figure: words`${mm(outerGirth(slope))}`,
  title: 'Round the brim’s edge',
  reckoning: [outerFigure(slope)],
});
