import { inches } from '../../units.ts';
import type { ParameterTable, ValuesOf } from '../parameter.ts';
import { bandParameters } from '../parts/band/parameters.ts';
import { easeParameter } from '../parts/ease.ts';
import { liningParameters } from '../parts/lining/parameters.ts';
import { allowanceParameters } from '../parts/seams/parameters.ts';
import { gatherParameters } from '../parts/side-band/parameters.ts';
import { strapParameters } from '../parts/strap/parameters.ts';
import { tippedCrownParameters } from '../parts/tipped-crown/parameters.ts';
import { visorParameters } from '../parts/visor/parameters.ts';

/** Everything that can be wished of a flat-top cap. Defaults and usual ranges are common practice of the trade. */
export const flatTopParameters = {
  ease: easeParameter([10, 25], inches(1 / 2)),
  crownFullness: {
    kind: 'length',
    label: 'Crown fullness',
    help: 'How much further round the top is than the opening. More spreads the top wider.',
    group: 'crown',
    min: 0,
    max: 320,
    step: 5,
    inchStep: 1 / 4,
    default: inches(4),
    usual: [50, 150],
  },
  sideBandHeight: tippedCrownParameters.sideBandHeight,
  crownTilt: {
    kind: 'length',
    label: 'Higher in front by',
    help: 'How much higher the top stands at the front than at the back; the sides keep their height.',
    group: 'crown',
    min: 0,
    max: 100,
    step: 2,
    inchStep: 1 / 8,
    default: 0,
    usual: [0, 50],
  },
  tipRatio: tippedCrownParameters.tipRatio,
  sideBandPieces: {
    kind: 'choice',
    label: 'Side band pieces',
    help: 'Quarters use scraps and print on fewer sheets; halves leave the front without a seam.',
    group: 'crown',
    options: [
      { value: '4', label: '4 quarters' },
      { value: '2', label: '2 halves' },
    ],
    default: '4',
  },
  ...gatherParameters,
  ...bandParameters,
  ...visorParameters,
  ...strapParameters,
  ...liningParameters,
  ...allowanceParameters(
    'crownAllowance',
    'sideAllowance',
    'bandAllowance',
    'lowerAllowance',
    'visorEdgeAllowance',
    'strapAllowance',
  ),
} as const satisfies ParameterTable;

export type FlatTopValues = ValuesOf<typeof flatTopParameters>;
