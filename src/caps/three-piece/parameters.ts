import { inches } from '../../units.ts';
import type { ParameterTable, ValuesOf } from '../parameter.ts';
import { easeParameter } from '../parts/ease.ts';
import { liningParameters } from '../parts/lining/parameters.ts';
import { allowanceParameters } from '../parts/seams/parameters.ts';
import { sweatbandParameters } from '../parts/sweatband/parameters.ts';
import { crownHeightParameter } from '../parts/top-and-sides/parameters.ts';
import { optionalVisorParameters } from '../parts/visor/parameters.ts';

/** Everything that can be wished of a three-piece flat cap. Defaults and usual ranges are common practice of the trade. */
export const threePieceParameters = {
  ease: easeParameter([10, 25], inches(1 / 2)),
  crownHeight: crownHeightParameter([80, 105], inches(3.5)),
  topWidth: {
    kind: 'length',
    label: 'Top width',
    help: 'Across the top at its widest. A wider top stands out further at the sides.',
    group: 'crown',
    min: 160,
    max: 280,
    step: 5,
    inchStep: 1 / 4,
    default: inches(8),
    usual: [180, 230],
  },
  overhang: {
    kind: 'length',
    label: 'Overhang at the front',
    help: 'How far the top comes forward over the visor.',
    group: 'crown',
    min: 10,
    max: 45,
    step: 1,
    inchStep: 1 / 8,
    default: inches(1),
    usual: [15, 35],
  },
  backFullness: {
    kind: 'length',
    label: 'Fullness at the back',
    help: 'How far the top stands out behind the lower edge.',
    group: 'crown',
    min: 0,
    max: 35,
    step: 1,
    inchStep: 1 / 8,
    default: inches(3 / 4),
    usual: [10, 25],
  },
  topWidest: {
    kind: 'ratio',
    label: 'Widest place of the top',
    help: 'How far back along the top it is widest: less is broad over the brow, more over the back of the head.',
    group: 'crown',
    min: 0.35,
    max: 0.6,
    step: 0.01,
    default: 0.45,
    usual: [0.4, 0.5],
  },
  topFrontWidth: {
    kind: 'length',
    label: 'Top width at the front',
    help: 'From seam to seam at the lower edge, over the visor.',
    group: 'crown',
    min: 60,
    max: 120,
    step: 2,
    inchStep: 1 / 8,
    default: inches(3.5),
    usual: [75, 105],
  },
  topBackWidth: {
    kind: 'length',
    label: 'Top width at the back',
    help: 'From seam to seam at the lower edge, behind.',
    group: 'crown',
    min: 50,
    max: 110,
    step: 2,
    inchStep: 1 / 8,
    default: inches(3),
    usual: [60, 90],
  },
  ...sweatbandParameters,
  ...optionalVisorParameters,
  ...liningParameters,
  liningTake: {
    ...liningParameters.liningTake,
    help: 'Taken off the lining’s height and width so that it does not bag.',
  },
  ...allowanceParameters(
    'goreAllowance',
    'sideAllowance',
    'lowerAllowance',
    'visorEdgeAllowance',
    'hemAllowance',
  ),
} as const satisfies ParameterTable;

export type ThreePieceValues = ValuesOf<typeof threePieceParameters>;
