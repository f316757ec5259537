import { inches } from '../../units.ts';
import type { ParameterTable, ValuesOf } from '../parameter.ts';
import { brimParameters } from '../parts/brim/parameters.ts';
import { easeParameter } from '../parts/ease.ts';
import { hatLiningParameters } from '../parts/lining/parameters.ts';
import { allowanceParameters } from '../parts/seams/parameters.ts';
import { sweatbandParameters } from '../parts/sweatband/parameters.ts';
import { narrowingCrownParameters } from '../parts/tipped-crown/parameters.ts';

const oneWay = { reversible: false } as const;

const allowances = allowanceParameters(
  'crownAllowance',
  'sideAllowance',
  'lowerAllowance',
  'brimEdgeAllowance',
  'hemAllowance',
);

/** Everything that can be wished of a bucket hat. Defaults and usual ranges are common practice of the trade. */
export const bucketParameters = {
  ease: easeParameter([6, 25], inches(1 / 2)),
  ...brimParameters,
  brimUnder: { ...brimParameters.brimUnder, when: oneWay },
  ...narrowingCrownParameters,
  reversible: {
    kind: 'switch',
    label: 'Reversible',
    help: 'Two hats of outer cloth, one inside the other, sewn together at the brim’s edge.',
    group: 'lining',
    default: false,
  },
  lining: { ...hatLiningParameters.lining, when: oneWay },
  liningTake: hatLiningParameters.liningTake,
  sweatbandHeight: { ...sweatbandParameters.sweatbandHeight, when: oneWay },
  ...allowances,
  hemAllowance: { ...allowances.hemAllowance, when: oneWay },
} as const satisfies ParameterTable;

export type BucketValues = ValuesOf<typeof bucketParameters>;
