import { line } from '../../../geometry/path.ts';
import { point } from '../../../geometry/point.ts';
import { notchesToMeet, type Side, sideScaled } from '../../../pattern/chain.ts';
import type { Figure, Piece } from '../../../pattern/piece.ts';
import type { EdgeUse } from '../../../pattern/seam.ts';
import { exactMm, mm, thickness, words } from '../../../words.ts';
import { backSeam } from '../band/band-seams.ts';
import { rectangle } from '../rectangle.ts';
import { one } from '../seams/seam.ts';

/** What the strip inside the lower edge is made of: ribbon, leather or lining; or the cap's own cloth. */
export type SweatbandKind = 'sweatband' | 'facing';

const kinds = {
  sweatband: {
    name: 'Sweatband',
    cloth: 'lining',
    note: words`A bought sweatband or ribbon of this length needs no allowance on its free edge.`,
  },
  facing: {
    name: 'Facing',
    cloth: 'outer',
    note: words`Turn in the free edge and catch it down by hand.`,
  },
} as const;

/**
 * The strip inside the lower edge, sewn to a side (from the centre back round to it again) and turned in.
 * It lies against the head, `within` of the girth of what it is sewn to. Height in mm, finished.
 */
export const sweatband = (
  meets: Side,
  height: number,
  kind: SweatbandKind = 'sweatband',
  within = 1,
): Piece => {
  const { name, cloth, note } = kinds[kind];
  const length = meets.length * within;
  const { bottom, right, top, left } = rectangle(length, height);
  return {
    id: 'sweatband',
    name,
    cuts: [{ cloth, count: 1 }],
    outline: [
      { name: 'bottom', path: bottom, kind: 'lower' },
      { name: 'right', path: right, kind: 'side' },
      { name: 'top', path: top, kind: 'hem' },
      { name: 'left', path: left, kind: 'side' },
    ],
    foldable: true,
    grain: [point(length * 0.06, height / 2), point(length * 0.14, height / 2)],
    notches: notchesToMeet('bottom', sideScaled(meets, within)),
    centreLines: [[line(point(0, 0), point(0, height))]],
    marks: [],
    labelAt: point(length * 0.33, height / 2),
    dimensions: [
      { name: 'Length', along: bottom },
      { name: 'Height', along: right },
    ],
    figures: [lengthFigure(name, meets.length, within)],
    notions:
      kind === 'sweatband'
        ? [
            {
              name: 'Sweatband or ribbon, or cut it from lining',
              size: words`${mm(height)} wide`,
              inPlace: true,
            },
          ]
        : [],
    notes: [note],
  };
};

const lengthFigure = (name: string, edge: number, within: number): Figure =>
  within === 1
    ? {
        name: `${name} length`,
        formula: 'the lower edge all the way round',
        worked: words`${exactMm(edge)}`,
      }
    : {
        name: `${name} length`,
        formula: 'the lower edge − 2π × cloth between its middle and that of the shell',
        worked: words`${exactMm(edge)} − 6.2832 × ${thickness((edge * (1 - within)) / (2 * Math.PI))} = ${exactMm(edge * within)}`,
      };

export const sweatbandBackSeam = (kind: SweatbandKind = 'sweatband') =>
  backSeam('sweatbandBack', `${kinds[kind].name} back seam`, 'sweatband');

/** The sweatband's edge that is sewn, from the centre back round to it again. */
export const sweatbandEdge: EdgeUse = one('sweatband', 'bottom');
