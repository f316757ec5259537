import { line } from '../../geometry/path.ts';
import { point } from '../../geometry/point.ts';
import type { Piece } from '../../pattern/piece.ts';
import type { Seam } from '../../pattern/seam.ts';
import { exactMm, words } from '../../words.ts';
import { rectangle } from '../parts/rectangle.ts';
import { back, one, plain } from '../parts/seams/seam.ts';
import { drawnIn } from './casing.ts';
import type { ScrubValues } from './parameters.ts';

/** One tie, flat: folded along its middle, sewn along its long edges and turned. */
export const tie = ({ tieLength, tieWidth }: ScrubValues, girth: number): Piece => {
  const inside = drawnIn(girth) / 2;
  const length = inside + tieLength;
  const { bottom, right, top, left } = rectangle(length, 2 * tieWidth);
  return {
    id: 'tie',
    name: 'Tie',
    cuts: [{ cloth: 'outer', count: 2 }],
    outline: [
      { name: 'bottom', path: bottom, kind: 'strapEdge' },
      { name: 'right', path: right, kind: 'strapEdge' },
      { name: 'top', path: top, kind: 'strapEdge' },
      { name: 'left', path: left, kind: 'strapEdge' },
    ],
    foldable: false,
    grain: [point(length * 0.28, tieWidth * 0.5), point(length * 0.4, tieWidth * 0.5)],
    notches: [],
    centreLines: [[line(point(-length / 2, tieWidth), point(length / 2, tieWidth))]],
    marks: [],
    labelAt: point(-length * 0.05, tieWidth * 1.5),
    dimensions: [
      { name: 'Length', along: bottom },
      { name: 'Width', along: right },
    ],
    figures: [
      {
        name: 'Tie length',
        formula: 'half of what is drawn in + what comes out',
        worked: words`${exactMm(inside)} + ${exactMm(tieLength)} = ${exactMm(length)}`,
      },
      {
        name: 'Tie, cut width on the stitch line',
        formula: '2 × finished width',
        worked: words`2 × ${exactMm(tieWidth)} = ${exactMm(2 * tieWidth)}`,
      },
    ],
    notes: [words`Fold lengthwise, close one end, turn.`, words`Not for a child: ties can catch.`],
  };
};

/** The long edge of each tie, sewn to itself. */
export const tieSeams = (): readonly Seam[] =>
  [0, 1].map((copy) =>
    plain(
      `tie${copy + 1}`,
      `Tie ${copy + 1}, long edge`,
      'strapEdge',
      [one('tie', 'bottom', copy)],
      [back('tie', 'top', copy)],
    ),
  );
