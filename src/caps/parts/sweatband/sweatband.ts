import { line } from '../../../geometry/path.ts';
import { point } from '../../../geometry/point.ts';
import { notchesToMeet, type Side } from '../../../pattern/chain.ts';
import type { Piece } from '../../../pattern/piece.ts';
import type { EdgeUse } from '../../../pattern/seam.ts';
import { exactMm, words } from '../../../words.ts';
import { backSeam } from '../band/band-seams.ts';
import { rectangle } from '../rectangle.ts';
import { one } from '../seams/seam.ts';

/**
 * The strip inside the lower edge, sewn to a side (from the centre back round to it again) and turned in.
 * Height in mm, finished.
 */
export const sweatband = (meets: Side, height: number): Piece => {
  const { length } = meets;
  const { bottom, right, top, left } = rectangle(length, height);
  return {
    id: 'sweatband',
    name: 'Sweatband',
    cuts: [{ cloth: 'lining', count: 1 }],
    outline: [
      { name: 'bottom', path: bottom, kind: 'lower' },
      { name: 'right', path: right, kind: 'side' },
      { name: 'top', path: top, kind: 'hem' },
      { name: 'left', path: left, kind: 'side' },
    ],
    foldable: true,
    grain: [point(length * 0.06, height / 2), point(length * 0.14, height / 2)],
    notches: notchesToMeet('bottom', meets),
    centreLines: [[line(point(0, 0), point(0, height))]],
    marks: [],
    labelAt: point(length * 0.33, height / 2),
    dimensions: [
      { name: 'Length', along: bottom },
      { name: 'Height', along: right },
    ],
    figures: [
      {
        name: 'Sweatband length',
        formula: 'the lower edge all the way round',
        worked: words`${exactMm(length)}`,
      },
    ],
    notes: [words`A bought sweatband or ribbon of this length needs no allowance on its free edge.`],
  };
};

export const sweatbandBackSeam = () => backSeam('sweatbandBack', 'Sweatband back seam', 'sweatband');

/** The sweatband's edge that is sewn, from the centre back round to it again. */
export const sweatbandEdge: EdgeUse = one('sweatband', 'bottom');
