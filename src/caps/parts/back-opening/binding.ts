import { point } from '../../../geometry/point.ts';
import type { Piece } from '../../../pattern/piece.ts';
import type { EdgeUse, Seam } from '../../../pattern/seam.ts';
import { count, exactMm, mm, words } from '../../../words.ts';
import { rectangle } from '../rectangle.ts';
import { one, plain } from '../seams/seam.ts';

/** Finished width of the binding, mm, and how often it goes into the strip: turned in, front, back, turned in (common practice). */
const FINISHED = 8;
const FOLDS = 4;

/** The bias strip that binds the whole arch, of which each back gore has half (mm). */
export const archBinding = (halfArch: number): Piece => {
  const [length, width] = [2 * halfArch, FOLDS * FINISHED];
  const { bottom, right, top, left } = rectangle(length, width);
  const [x, rise] = [-length * 0.36, width * 0.3];
  return {
    id: 'archBinding',
    name: 'Opening binding',
    cuts: [{ cloth: 'outer', count: 1 }],
    outline: [
      { name: 'bottom', path: bottom, kind: 'none' },
      { name: 'right', path: right, kind: 'lower' },
      { name: 'top', path: top, kind: 'none' },
      { name: 'left', path: left, kind: 'lower' },
    ],
    foldable: false,
    grain: [point(x - rise, width / 2 - rise), point(x + rise, width / 2 + rise)],
    notches: [{ edge: 'bottom', at: halfArch, count: 2, name: 'centre back' }],
    centreLines: [],
    marks: [],
    labelAt: point(length * 0.27, width / 2),
    dimensions: [
      { name: 'Length', along: bottom },
      { name: 'Width', along: right },
    ],
    figures: [
      {
        name: 'Length of the binding',
        formula: 'both halves of the arch, on its edge',
        worked: words`2 × ${exactMm(halfArch)} = ${exactMm(length)}`,
      },
      {
        name: 'Width of the binding',
        formula: 'four times its finished width',
        worked: words`${count(FOLDS)} × ${exactMm(FINISHED)} = ${exactMm(width)}`,
      },
    ],
    notes: [words`Bought bias binding ${mm(FINISHED)} wide does as well.`],
  };
};

/** The binding round the arch, whose edge is given from the wearer's right foot over the top to the left. */
export const archSeam = (arch: readonly EdgeUse[]): Seam =>
  plain('backOpening', 'Back opening to its binding', 'none', arch, [one('archBinding', 'bottom')]);
