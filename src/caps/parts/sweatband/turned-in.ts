import { stretchOf, walker } from '../../../pattern/chain.ts';
import type { Piece } from '../../../pattern/piece.ts';
import type { EdgeUse, Seam } from '../../../pattern/seam.ts';
import type { Opening } from '../../opening.ts';
import { inside, ring } from '../seams/seam.ts';
import { type VisorParts, visorMeeting } from '../visor/visor-parts.ts';
import { visorEdgeSeam, visorSeam } from '../visor/visor-seams.ts';
import { type SweatbandKind, sweatband, sweatbandBackSeam, sweatbandEdge } from './sweatband.ts';

/** One layer of a crown, and its lower edge from the centre back round to it again. */
interface Layer {
  readonly pieces: readonly Piece[];
  readonly lower: readonly EdgeUse[];
}

interface TurnedInWish {
  readonly shell: Layer;
  readonly lining: Layer | null;
  /** Null, or one without pieces, for a cap without a visor. */
  readonly visor: VisorParts | null;
  readonly kind: SweatbandKind;
  readonly opening: Opening;
  /** Of the sweatband, mm, finished. */
  readonly height: number;
}

/** A crown finished at its own lower edge: lining, visor and sweatband are all sewn to it, and the sweatband turned in. */
export interface TurnedIn {
  readonly visor: readonly Piece[];
  readonly sweatband: Piece;
  /** The visor's own seam, to be sewn first. */
  readonly first: readonly Seam[];
  readonly seams: readonly Seam[];
}

export const turnedIn = ({ shell, lining, visor, kind, opening, height }: TurnedInWish): TurnedIn => {
  const walk = walker(shell.pieces);
  const round = walk(shell.lower);
  const wide = visor?.stretch ?? 0;
  const front = stretchOf(shell.pieces, shell.lower, (round.length - wide) / 2, (round.length + wide) / 2);
  const hasVisor = visor !== null && visor.pieces.length > 0;
  return {
    visor: hasVisor ? visorMeeting(visor, walk(front)).pieces : [],
    sweatband: sweatband(round, height, kind, opening.inner / opening.shell),
    first: hasVisor ? [visorEdgeSeam(visor)] : [],
    seams: [
      ...(lining
        ? [
            inside(
              ring('liningEdge', 'Lining to crown, lower edge', 'lower', shell.lower, lining.lower),
              opening.shell,
              opening.lining,
            ),
          ]
        : []),
      ...(hasVisor ? [visorSeam('crown', front)] : []),
      sweatbandBackSeam(kind),
      inside(
        ring('lowerEdge', `Crown to ${kind}, lower edge`, 'lower', shell.lower, [sweatbandEdge]),
        opening.shell,
        opening.inner,
      ),
    ],
  };
};
