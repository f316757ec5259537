import { line } from '../../../geometry/path.ts';
import { point } from '../../../geometry/point.ts';
import type { Notch, Piece } from '../../../pattern/piece.ts';
import { exactMm, mm, ratio, words } from '../../../words.ts';
import { rectangle } from '../rectangle.ts';
import { back, one } from '../seams/seam.ts';
import type { Fastening } from './fastening.ts';
import type { BackStrapValues } from './parameters.ts';
import { TUCK, tuckNote } from './tuck.ts';

/** An elastic is this much narrower than its casing, mm: room to slide. */
const SLIDE = 3;

/**
 * A casing folded lengthwise, its fold upwards, with an elastic in it: as long as the opening when the elastic is stretched flat.
 * Both its long edges lie on the cap's lower edge, where they are sewn to each other.
 */
export const elasticCasing = (values: BackStrapValues, openingWidth: number, within: number): Fastening => {
  const half = openingWidth / 2;
  const middle = TUCK + half;
  const right = (reach: number) => ({ from: middle, to: middle + reach });
  const left = (reach: number) => ({ from: middle - reach, to: middle });
  return {
    pieces: [casing(values, openingWidth)],
    seams: [],
    outer: {
      toRight: { ...one('elasticCasing', 'bottom'), ...right(half) },
      fromLeft: { ...one('elasticCasing', 'bottom'), ...left(half) },
    },
    inner: {
      toRight: { ...back('elasticCasing', 'top'), ...right(half * within) },
      fromLeft: { ...back('elasticCasing', 'top'), ...left(half * within) },
    },
  };
};

const casing = ({ backStrapWidth: width, elasticStretch }: BackStrapValues, opening: number): Piece => {
  const [length, height] = [opening + 2 * TUCK, 2 * width];
  const { bottom, right, top, left } = rectangle(length, height);
  const elastic = opening * (1 - elasticStretch) + 2 * TUCK;
  const notches = (edge: string): readonly Notch[] => [
    { edge, at: TUCK, count: 1, name: 'edge of the opening' },
    { edge, at: length / 2, count: 2, name: 'centre back' },
    { edge, at: length - TUCK, count: 1, name: 'edge of the opening' },
  ];
  return {
    id: 'elasticCasing',
    name: 'Elastic casing',
    cuts: [{ cloth: 'outer', count: 1 }],
    outline: [
      { name: 'bottom', path: bottom, kind: 'lower' },
      { name: 'right', path: right, kind: 'none' },
      { name: 'top', path: top, kind: 'lower' },
      { name: 'left', path: left, kind: 'none' },
    ],
    foldable: true,
    grain: [point(length * 0.1, height * 0.75), point(length * 0.24, height * 0.75)],
    notches: [...notches('bottom'), ...notches('top')],
    centreLines: [[line(point(-length / 2, width), point(length / 2, width))]],
    marks: [],
    labelAt: point(0, height * 0.27),
    dimensions: [
      { name: 'Length', along: bottom },
      { name: 'Height', along: right },
    ],
    figures: [
      {
        name: 'Length of the casing',
        formula: 'opening width + twice what is sewn in',
        worked: words`${exactMm(opening)} + 2 × ${exactMm(TUCK)} = ${exactMm(length)}`,
      },
      {
        name: 'Length of the elastic',
        formula: 'opening width less its share + twice what is sewn in',
        worked: words`${exactMm(opening)} × (100 % − ${ratio(elasticStretch)}) + 2 × ${exactMm(TUCK)} = ${exactMm(elastic)}`,
      },
    ],
    notions: [{ name: 'Elastic', size: words`${mm(elastic)} long, ${mm(width - SLIDE)} wide` }],
    notes: [
      words`Elastic ${mm(width - SLIDE)} × ${exactMm(elastic)}, caught at both ends. Fold lengthwise.`,
      tuckNote,
    ],
  };
};
