import { degrees } from '../../units.ts';
import type { ParameterTable, ValuesOf } from '../parameter.ts';
import { backOpeningParameters } from '../parts/back-opening/parameters.ts';
import { backStrapParameters } from '../parts/back-strap/parameters.ts';
import { topButtonParameters } from '../parts/button/parameters.ts';
import { easeParameter } from '../parts/ease.ts';
import { goreParameters } from '../parts/gore/parameters.ts';
import { allowanceParameters } from '../parts/seams/parameters.ts';
import { sweatbandParameters } from '../parts/sweatband/parameters.ts';
import { visorParameters } from '../parts/visor/parameters.ts';

const allowances = allowanceParameters(
  'goreAllowance',
  'lowerAllowance',
  'visorEdgeAllowance',
  'strapAllowance',
  'hemAllowance',
);

/** Everything that can be wished of a ball cap. Defaults and usual ranges are common practice of the trade. */
export const ballParameters = {
  ease: easeParameter([6, 13], 10),
  crownRoom: { ...goreParameters.crownRoom, default: -12, usual: [-24, 8] },
  frontSteepness: {
    kind: 'ratio',
    label: 'Front steepness',
    help: 'How much steeper and taller the stiff front rises than the back. None is equally round all about.',
    group: 'crown',
    min: 0,
    max: 0.35,
    step: 0.01,
    default: 0.2,
    usual: [0.1, 0.25],
  },
  goreWidest: { ...goreParameters.goreWidest, default: 0.2, usual: [0.15, 0.3] },
  eyelets: {
    kind: 'switch',
    label: 'Eyelets',
    help: 'One in each gore for air, two thirds of the way up.',
    group: 'crown',
    default: true,
  },
  ...topButtonParameters,
  ...visorParameters,
  visorLength: { ...visorParameters.visorLength, default: 186 },
  visorDepth: { ...visorParameters.visorDepth, default: 70 },
  visorDrop: { ...visorParameters.visorDrop, default: degrees(25) },
  visorFullness: { ...visorParameters.visorFullness, default: 0.6 },
  ...backOpeningParameters,
  ...backStrapParameters,
  ...sweatbandParameters,
  ...allowances,
  strapAllowance: { ...allowances.strapAllowance, when: { backFastening: 'strap' } },
} as const satisfies ParameterTable;

export type BallValues = ValuesOf<typeof ballParameters>;
