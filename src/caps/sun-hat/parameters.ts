import { degrees, inches } from '../../units.ts';
import type { ParameterTable, ValuesOf } from '../parameter.ts';
import { brimParameters } from '../parts/brim/parameters.ts';
import { easeParameter } from '../parts/ease.ts';
import { goreParameters } from '../parts/gore/parameters.ts';
import { hatLiningParameters } from '../parts/lining/parameters.ts';
import { allowanceParameters } from '../parts/seams/parameters.ts';
import { sweatbandParameters } from '../parts/sweatband/parameters.ts';
import { narrowingCrownParameters } from '../parts/tipped-crown/parameters.ts';

const gored = { crown: 'gored' } as const;
const tipped = { crown: 'tipped' } as const;

const allowances = allowanceParameters(
  'crownAllowance',
  'goreAllowance',
  'sideAllowance',
  'lowerAllowance',
  'brimEdgeAllowance',
  'hemAllowance',
);

/** Everything that can be wished of a sun hat. Defaults and usual ranges are common practice of the trade. */
export const sunHatParameters = {
  ease: easeParameter([13, 25], inches(1)),
  ...brimParameters,
  brimWidth: { ...brimParameters.brimWidth, default: 110, usual: [90, 130] },
  brimDrop: { ...brimParameters.brimDrop, default: degrees(15), usual: [degrees(10), degrees(30)] },
  brimShape: { ...brimParameters.brimShape, default: 'oval' },
  brimPieces: { ...brimParameters.brimPieces, default: '2' },
  crown: {
    kind: 'choice',
    label: 'Crown',
    help: 'Gores run up to the middle of the top; a tip and a side give it a flat top.',
    group: 'crown',
    options: [
      { value: 'gored', label: 'Gores' },
      { value: 'tipped', label: 'Tip and side' },
    ],
    default: 'gored',
  },
  crownRoom: { ...goreParameters.crownRoom, default: 16, usual: [0, 40], when: gored },
  goreWidest: { ...goreParameters.goreWidest, default: 0.16, usual: [0.1, 0.3], when: gored },
  gores: { ...goreParameters.gores, default: 6, when: gored },
  frontSeam: { ...goreParameters.frontSeam, when: gored },
  sideBandHeight: { ...narrowingCrownParameters.sideBandHeight, when: tipped },
  crownTaper: { ...narrowingCrownParameters.crownTaper, when: tipped },
  sideBandPieces: { ...narrowingCrownParameters.sideBandPieces, when: tipped },
  ...hatLiningParameters,
  ...sweatbandParameters,
  ...allowances,
  crownAllowance: { ...allowances.crownAllowance, when: tipped },
  goreAllowance: { ...allowances.goreAllowance, when: gored },
} as const satisfies ParameterTable;

export type SunHatValues = ValuesOf<typeof sunHatParameters>;
