import { inches } from '../../units.ts';
import type { ParameterTable, ValuesOf } from '../parameter.ts';
import { bandParameters } from '../parts/band/parameters.ts';
import { topButtonParameters } from '../parts/button/parameters.ts';
import { easeParameter } from '../parts/ease.ts';
import { fullGoreParameters } from '../parts/gore/parameters.ts';
import { liningParameters } from '../parts/lining/parameters.ts';
import { allowanceParameters } from '../parts/seams/parameters.ts';
import { strapParameters } from '../parts/strap/parameters.ts';
import { sweatbandParameters } from '../parts/sweatband/parameters.ts';
import { optionalVisorParameters, visored } from '../parts/visor/parameters.ts';

const allowances = allowanceParameters(
  'goreAllowance',
  'sideAllowance',
  'bandAllowance',
  'lowerAllowance',
  'visorEdgeAllowance',
  'strapAllowance',
  'hemAllowance',
);

/** Everything that can be wished of a gored cap. Defaults and usual ranges are common practice of the trade. */
export const goredParameters = {
  ease: easeParameter([6, 25], inches(1 / 2)),
  ...fullGoreParameters,
  ...topButtonParameters,
  edge: {
    kind: 'choice',
    label: 'Lower edge',
    help: 'A band below the crown, or the crown’s own edge with a sweatband turned in.',
    group: 'band',
    options: [
      { value: 'band', label: 'Band' },
      { value: 'sweatband', label: 'Sweatband' },
    ],
    default: 'band',
  },
  bandHeight: { ...bandParameters.bandHeight, when: { edge: 'band' } },
  bandGrain: { ...bandParameters.bandGrain, when: { edge: 'band' } },
  sweatbandHeight: { ...sweatbandParameters.sweatbandHeight, when: { edge: 'sweatband' } },
  ...optionalVisorParameters,
  ...strapParameters,
  strap: {
    ...strapParameters.strap,
    help: 'A strap above the visor, held by two buttons, where there are a band and a visor.',
    default: false,
    when: { edge: 'band', ...visored },
  },
  ...liningParameters,
  ...allowances,
  bandAllowance: { ...allowances.bandAllowance, when: { edge: 'band' } },
  hemAllowance: { ...allowances.hemAllowance, when: { edge: 'sweatband' } },
} as const satisfies ParameterTable;

export type GoredValues = ValuesOf<typeof goredParameters>;

/** How much of the way over the head the band takes, mm. */
export const bandOf = ({ edge, bandHeight }: GoredValues): number => (edge === 'band' ? bandHeight : 0);

/** Whether there is a strap: it lies on a band, above a visor. */
export const hasStrap = ({ strap, edge, visorSource }: GoredValues): boolean =>
  strap && edge === 'band' && visorSource !== 'none';
