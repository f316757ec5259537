import type { ParameterTable, ValuesOf } from '../parameter.ts';
import { easeParameter } from '../parts/ease.ts';
import { hatLiningParameters } from '../parts/lining/parameters.ts';
import { allowanceParameters } from '../parts/seams/parameters.ts';
import { sweatbandParameters } from '../parts/sweatband/parameters.ts';
import { narrowingCrownParameters } from '../parts/tipped-crown/parameters.ts';

const { sideBandHeight, crownTaper, sideBandPieces } = narrowingCrownParameters;

/** Everything that can be wished of a pillbox. Defaults and usual ranges are common practice of the trade. */
export const pillboxParameters = {
  ease: easeParameter([0, 10], 6),
  sideBandHeight: { ...sideBandHeight, default: 70, usual: [50, 90] },
  crownTaper: { ...crownTaper, default: 0, usual: [0, 38] },
  tipShape: {
    kind: 'choice',
    label: 'Tip shape',
    help: 'The head’s oval sits level on a stiff hat; a round tip is for soft cloth that takes the oval by itself.',
    group: 'crown',
    options: [
      { value: 'oval', label: 'The head’s oval' },
      { value: 'round', label: 'Round' },
    ],
    default: 'oval',
  },
  sideBandPieces,
  crownBody: {
    kind: 'choice',
    label: 'Inside tip and side',
    help: 'What is laid behind the cloth to hold the hat up.',
    group: 'crown',
    options: [
      { value: 'stiffener', label: 'Stiffener' },
      { value: 'interlining', label: 'Interlining' },
      { value: 'none', label: 'Nothing' },
    ],
    default: 'stiffener',
  },
  ...hatLiningParameters,
  ...sweatbandParameters,
  ...allowanceParameters('crownAllowance', 'sideAllowance', 'lowerAllowance', 'hemAllowance'),
} as const satisfies ParameterTable;

export type PillboxValues = ValuesOf<typeof pillboxParameters>;
