import type { Seam } from '../../pattern/seam.ts';
import { backSeam, topSeam, visorStretchOf } from '../parts/band/band-seams.ts';
import { one, ring } from '../parts/seams/seam.ts';
import { strapSeam } from '../parts/strap/strap-seam.ts';
import type { TippedCrown } from '../parts/tipped-crown/tipped-crown.ts';
import { visorEdgeSeam, visorSeam } from '../parts/visor/visor-seams.ts';

interface SeamsWish {
  readonly shell: TippedCrown;
  /** Null where only the band is faced. */
  readonly lining: TippedCrown | null;
  readonly strap: boolean;
  /** By what part the shell's lower edge is longer than the band. */
  readonly gather: number;
  readonly girth: number;
  readonly visorStretch: number;
}

/** Every seam of a flat-top cap, in sewing order. */
export const flatTopSeams = ({
  shell,
  lining,
  strap,
  gather,
  girth,
  visorStretch,
}: SeamsWish): readonly Seam[] => [
  visorEdgeSeam(),
  ...(strap ? [strapSeam()] : []),
  ...shell.seams,
  backSeam('back', 'Band back seam', 'band'),
  topSeam('bandToSide', 'Side band to band', shell.lower, 'band', gather),
  visorSeam('band', [visorStretchOf('band', girth, visorStretch)]),
  ...(lining
    ? [
        ...lining.seams,
        backSeam('liningBack', 'Lining band back seam', 'liningBand'),
        topSeam('liningBandToSide', 'Lining side band to band', lining.lower, 'liningBand'),
      ]
    : [backSeam('liningBack', 'Facing back seam', 'liningBand')]),
  ring(
    'lowerEdge',
    lining ? 'Band to lining band, lower edge' : 'Band to facing, lower edge',
    'lower',
    [one('band', 'bottom')],
    [one('liningBand', 'bottom')],
  ),
];
