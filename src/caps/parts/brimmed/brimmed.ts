import type { OvalParallel } from '../../../geometry/oval-parallel.ts';
import { walker } from '../../../pattern/chain.ts';
import type { Piece } from '../../../pattern/piece.ts';
import type { EdgeUse, Seam } from '../../../pattern/seam.ts';
import type { Opening } from '../../opening.ts';
import { type Brim, brim } from '../brim/brim.ts';
import { brimEdgeSeam, brimInnerSeam, brimJoinSeams, brimToCrown } from '../brim/brim-seams.ts';
import type { BrimSlope } from '../brim/brim-slope.ts';
import type { BrimValues } from '../brim/parameters.ts';
import { inside, ring } from '../seams/seam.ts';
import { sweatband, sweatbandBackSeam, sweatbandEdge } from '../sweatband/sweatband.ts';

/** One layer of a crown, and its lower edge from the centre back round to it again. */
interface Layer {
  readonly pieces: readonly Piece[];
  readonly seams: readonly Seam[];
  readonly lower: readonly EdgeUse[];
}

interface BrimmedWish {
  readonly shell: Layer;
  readonly lining: Layer | null;
  readonly girths: Opening;
  /** The shell's lower edge. */
  readonly opening: OvalParallel;
  readonly values: BrimValues;
  /** Shell and upper brim are one hat, lining and under brim another: sewn together at the brim's edge and turned. */
  readonly reversible: boolean;
  /** Of the sweatband, mm, finished. */
  readonly sweatbandHeight: number;
}

/** A crown with a brim all round. */
export interface Brimmed {
  readonly pieces: readonly Piece[];
  /** All of them, in sewing order. */
  readonly seams: readonly Seam[];
  readonly slope: BrimSlope;
}

/** The brim of some values on the opening of a crown. */
export const brimOnCrown = (
  values: BrimValues,
  opening: OvalParallel,
  shell: Pick<Layer, 'pieces' | 'lower'>,
): Brim & { readonly slope: BrimSlope } => {
  const slope = { opening, width: values.brimWidth, drop: values.brimDrop };
  return { slope, ...brim(slope, values, walker(shell.pieces)(shell.lower)) };
};

export const brimmed = (wish: BrimmedWish): Brimmed => {
  const { shell, lining, girths } = wish;
  const ofBrim = brimOnCrown(wish.values, wish.opening, shell);
  const { slope } = ofBrim;
  if (wish.reversible && lining) {
    return {
      pieces: [...shell.pieces, ...ofBrim.pieces, ...lining.pieces],
      seams: turnedThrough(shell, lining, ofBrim),
      slope,
    };
  }
  return {
    pieces: [
      ...shell.pieces,
      ...ofBrim.pieces,
      ...(lining?.pieces ?? []),
      sweatband(
        walker(shell.pieces)(shell.lower),
        wish.sweatbandHeight,
        'sweatband',
        girths.inner / girths.shell,
      ),
    ],
    seams: [
      ...shell.seams,
      ...brimJoinSeams(ofBrim),
      brimEdgeSeam(ofBrim),
      brimInnerSeam(ofBrim),
      brimToCrown(shell.lower, ofBrim),
      ...(lining
        ? [
            ...lining.seams,
            inside(
              ring('liningEdge', 'Lining to crown, lower edge', 'lower', shell.lower, lining.lower),
              girths.shell,
              girths.lining,
            ),
          ]
        : []),
      sweatbandBackSeam(),
      inside(
        ring('sweatbandEdge', 'Sweatband to crown, lower edge', 'lower', shell.lower, [sweatbandEdge]),
        girths.shell,
        girths.inner,
      ),
    ],
    slope,
  };
};

const turnedThrough = (shell: Layer, lining: Layer, ofBrim: Brim): readonly Seam[] => [
  ...shell.seams,
  ...brimJoinSeams(ofBrim),
  brimToCrown(shell.lower, ofBrim),
  ...lining.seams,
  ring('liningEdge', 'Inner crown to under brim', 'lower', lining.lower, ofBrim.under.inner),
  brimEdgeSeam(ofBrim),
];
