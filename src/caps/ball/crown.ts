import { pathLength } from '../../geometry/measure.ts';
import type { Piece } from '../../pattern/piece.ts';
import type { EdgeUse, Seam } from '../../pattern/seam.ts';
import { archBinding, archSeam } from '../parts/back-opening/binding.ts';
import { back, one, plain } from '../parts/seams/seam.ts';
import type { BallCrownShape } from './crown-shape.ts';
import { ballGores, type GoreMarks } from './gore-pieces.ts';

/**
 * Six gores in mirrored pairs: front, side and back. Copy 0 of each stands on the wearer's right, seen as it is drawn;
 * copy 1, mirrored, on the left. The arch at the back is bound.
 */
export interface BallCrown {
  readonly pieces: readonly Piece[];
  readonly seams: readonly Seam[];
  /** The lower edge from the wearer's right end of the opening round the front to its left end. */
  readonly lower: readonly EdgeUse[];
}

export const ballCrown = (shape: BallCrownShape, marks: GoreMarks): BallCrown => ({
  pieces: [...ballGores(shape, marks), archBinding(pathLength(shape.back.arch))],
  seams: [...longSeams, archSeam([back('goreBack', 'arch', 0), one('goreBack', 'arch', 1)])],
  lower: ['goreBack', 'goreSide', 'goreFront', 'goreFront', 'goreSide', 'goreBack'].map((piece, i) =>
    i < 3 ? one(piece, 'bottom', 0) : back(piece, 'bottom', 1),
  ),
});

const HALVES = ['right', 'left'] as const;

/** In pairs, pairs to halves, and the halves in one run over the middle from the centre front to the opening. */
const longSeams: readonly Seam[] = [
  ...HALVES.map((half, copy) =>
    plain(
      `frontToSide${copy}`,
      `Front gore to side gore, ${half}`,
      'gore',
      [one('goreSide', 'right', copy)],
      [back('goreFront', 'left', copy)],
    ),
  ),
  ...HALVES.map((half, copy) =>
    plain(
      `sideToBack${copy}`,
      `Side gore to back gore, ${half}`,
      'gore',
      [one('goreBack', 'right', copy)],
      [back('goreSide', 'left', copy)],
    ),
  ),
  plain(
    'over',
    'Halves together, over the middle',
    'gore',
    [one('goreFront', 'right', 0), one('goreBack', 'left', 0)],
    [one('goreFront', 'right', 1), one('goreBack', 'left', 1)],
  ),
];
