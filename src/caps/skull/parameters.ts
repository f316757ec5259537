import type { ParameterTable, ValuesOf } from '../parameter.ts';
import { topButtonParameters } from '../parts/button/parameters.ts';
import { easeParameter } from '../parts/ease.ts';
import { goreParameters } from '../parts/gore/parameters.ts';
import { liningParameters } from '../parts/lining/parameters.ts';
import { allowanceParameters } from '../parts/seams/parameters.ts';
import { sweatbandParameters } from '../parts/sweatband/parameters.ts';

/** Everything that can be wished of a skull cap. Defaults and usual ranges are common practice of the trade. */
export const skullParameters = {
  ease: easeParameter([0, 6], 4),
  ...goreParameters,
  crownRoom: { ...goreParameters.crownRoom, default: -16, usual: [-34, 10] },
  goreWidest: { ...goreParameters.goreWidest, default: 0.1, usual: [0.1, 0.2] },
  gores: { ...goreParameters.gores, default: 6, usual: [4, 8] },
  ...topButtonParameters,
  topButton: { ...topButtonParameters.topButton, default: false },
  edge: {
    kind: 'choice',
    label: 'Lower edge',
    help: 'What is turned in along the edge: a sweatband, or a facing of the cap’s own cloth.',
    group: 'band',
    options: [
      { value: 'sweatband', label: 'Sweatband' },
      { value: 'facing', label: 'Facing' },
    ],
    default: 'sweatband',
  },
  ...sweatbandParameters,
  ...liningParameters,
  ...allowanceParameters('goreAllowance', 'sideAllowance', 'lowerAllowance', 'hemAllowance'),
} as const satisfies ParameterTable;

export type SkullValues = ValuesOf<typeof skullParameters>;
