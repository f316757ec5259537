import { isRound } from '../../../geometry/oval.ts';
import type { Figure } from '../../../pattern/piece.ts';
import { count, exactMm, radians, ratio, words } from '../../../words.ts';
import { dropOf, type End, reachOf, type SideSlope } from './side-slope.ts';

/** Overhang by height from which rounded figures could ask for the arcsine of more than 1. */
const ALL_BUT_FLAT = 0.999;

/** The arithmetic of one of so many side band pieces, at one end of the cap; `gather` and `girthName` as in SideBandWish. */
export const sideBandFigures = (
  slope: SideSlope,
  pieces: number,
  gather: number,
  end: End,
  girthName: string,
): readonly Figure[] => {
  const { rimGirth, openingGirth, tilt } = slope;
  const finished = openingGirth / (1 + gather);
  return [
    {
      name: 'Top edge of one piece',
      formula: 'crown girth ÷ number of pieces',
      worked: words`${exactMm(rimGirth)} ÷ ${count(pieces)} = ${exactMm(rimGirth / pieces)}`,
    },
    gather === 0
      ? {
          name: 'Bottom edge of one piece',
          formula: `${girthName} ÷ number of pieces`,
          worked: words`${exactMm(openingGirth)} ÷ ${count(pieces)} = ${exactMm(openingGirth / pieces)}`,
        }
      : {
          name: 'Bottom edge of one piece',
          formula: `${girthName} × (1 + gathers) ÷ number of pieces`,
          worked: words`${exactMm(finished)} × ${ratio(1 + gather)} ÷ ${count(pieces)} = ${exactMm(openingGirth / pieces)}`,
        },
    ...(tilt === 0 ? levelFigures(slope, pieces, gather, girthName) : [tiltedHeight(slope, end)]),
  ];
};

/** Under a tilted rim: how high the piece is at the centre front or back. */
const tiltedHeight = (slope: SideSlope, end: End): Figure => {
  const [reach, drop] = [reachOf(slope), dropOf(slope)];
  const half = slope.tilt / 2;
  const up = end === 'front' ? drop + half : drop - half;
  return {
    name: `Height at the centre ${end}`,
    formula: `root of (overhang² + rise²); the rise is that of the sides ${end === 'front' ? '+' : '−'} tilt ÷ 2`,
    worked: words`√((${exactMm(reach)})² + (${exactMm(drop)} ${end === 'front' ? '+' : '−'} ${exactMm(half)})²) = ${exactMm(Math.hypot(reach, up))}`,
  };
};

const levelFigures = (
  slope: SideSlope,
  pieces: number,
  gather: number,
  girthName: string,
): readonly Figure[] => {
  const { rimGirth, openingGirth, height } = slope;
  const fullness = rimGirth - openingGirth;
  const apart = Math.abs(fullness);
  const flares = fullness >= 0;
  const leaning = Math.abs(reachOf(slope)) / height;
  const more = gather === 0 && flares ? 'fullness' : 'difference of the edges';
  const lean: Figure = {
    name: flares ? 'Lean from upright' : 'Lean from upright, inwards',
    formula: `arcsine of ${more} ÷ (2π × height)`,
    worked:
      leaning < ALL_BUT_FLAT
        ? words`arcsin(${exactMm(apart)} ÷ (6.2832 × ${exactMm(height)})) = ${radians(Math.asin(leaning))}`
        : words`It lies all but flat: ${radians(Math.asin(Math.min(1, leaning)))}`,
  };
  const leans = gather === 0 ? [lean] : [];
  // Does the crown go straight up? Then the piece is a rectangle and has no radius.
  if (!isRound(slope.rim) || apart < 1e-6) return leans;
  const bottom = (openingGirth * height) / apart;
  const lower = gather === 0 ? girthName : 'lower edge';
  const sign = flares ? '+' : '−';
  return [
    ...leans,
    {
      name: 'Radius of the bottom edge',
      formula: `${lower} × height ÷ ${more}`,
      worked: words`${exactMm(openingGirth)} × ${exactMm(height)} ÷ ${exactMm(apart)} = ${exactMm(bottom)}`,
    },
    {
      name: 'Radius of the top edge',
      formula: `radius of the bottom edge ${sign} height`,
      worked: words`${exactMm(bottom)} ${sign} ${exactMm(height)} = ${exactMm(sign === '+' ? bottom + height : bottom - height)}`,
    },
    {
      name: 'Angle of one piece',
      formula: `${more} ÷ number of pieces ÷ height × 180° ÷ π`,
      worked: words`${exactMm(apart)} ÷ ${count(pieces)} ÷ ${exactMm(height)} × 180° ÷ 3.1416 = ${radians(apart / pieces / height)}`,
    },
  ];
};
