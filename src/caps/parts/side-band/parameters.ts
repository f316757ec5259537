import type { ParameterTable, ValuesOf } from '../../parameter.ts';

/** What can be wished of a lower edge that is longer than the band it is sewn to. */
export const gatherParameters = {
  crownGather: {
    kind: 'ratio',
    label: 'Crown gathered by',
    help: 'How much longer the crown’s lower edge is than the band; the surplus is drawn in where they meet.',
    group: 'crown',
    min: 0,
    max: 0.8,
    step: 0.05,
    default: 0,
    usual: [0, 0.5],
  },
  gatherAs: {
    kind: 'choice',
    label: 'Surplus taken up in',
    help: 'Gathers draw it in evenly; pleats lay it in folds that point to the back. Either shows once the crown is gathered.',
    group: 'crown',
    options: [
      { value: 'gathers', label: 'Gathers' },
      { value: 'pleats', label: 'Pleats' },
    ],
    default: 'gathers',
    when: { crownGather: { above: 0 } },
  },
  pleats: {
    kind: 'count',
    label: 'Pleats in each quarter',
    help: 'More pleats are smaller ones: together they take up the whole surplus.',
    group: 'crown',
    min: 1,
    max: 8,
    step: 1,
    default: 2,
    when: { gatherAs: 'pleats' },
  },
} as const satisfies ParameterTable;

export type GatherValues = ValuesOf<typeof gatherParameters>;

/** Pleats in each quarter, 0 where there are none. */
export const pleatCount = ({ crownGather, gatherAs, pleats }: GatherValues): number =>
  gatherAs === 'pleats' && crownGather > 0 ? pleats : 0;
