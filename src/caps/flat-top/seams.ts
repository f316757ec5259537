import type { Seam } from '../../pattern/seam.ts';
import type { Opening } from '../opening.ts';
import { backSeam, bandEdgeSeam, topSeam, visorStretchOf } from '../parts/band/band-seams.ts';
import { strapSeam } from '../parts/strap/strap-seam.ts';
import type { TippedCrown } from '../parts/tipped-crown/tipped-crown.ts';
import type { VisorParts } from '../parts/visor/visor-parts.ts';
import { visorEdgeSeam, visorSeam } from '../parts/visor/visor-seams.ts';

interface SeamsWish {
  readonly shell: TippedCrown;
  /** Null where only the band is faced. */
  readonly lining: TippedCrown | null;
  readonly strap: boolean;
  /** By what part the shell's lower edge is longer than the band. */
  readonly gather: number;
  readonly opening: Opening;
  readonly visor: VisorParts;
}

/** Every seam of a flat-top cap, in sewing order. */
export const flatTopSeams = ({
  shell,
  lining,
  strap,
  gather,
  opening,
  visor,
}: SeamsWish): readonly Seam[] => [
  visorEdgeSeam(visor),
  ...(strap ? [strapSeam()] : []),
  ...shell.seams,
  backSeam('back', 'Band back seam', 'band'),
  topSeam('bandToSide', 'Side band to band', shell.lower, 'band', gather),
  visorSeam('band', [visorStretchOf('band', opening.shell, visor.stretch)]),
  ...(lining
    ? [
        ...lining.seams,
        backSeam('liningBack', 'Lining band back seam', 'liningBand'),
        topSeam('liningBandToSide', 'Lining side band to band', lining.lower, 'liningBand'),
      ]
    : [backSeam('liningBack', 'Facing back seam', 'liningBand')]),
  bandEdgeSeam(lining !== null, opening),
];
