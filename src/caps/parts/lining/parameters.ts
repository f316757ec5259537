import type { ParameterTable, ValuesOf } from '../../parameter.ts';

/** What can be wished of a lining. */
export const liningParameters = {
  lining: {
    kind: 'switch',
    label: 'Lining',
    help: 'A full lining. Without it the band gets a facing.',
    group: 'lining',
    default: true,
  },
  liningTake: {
    kind: 'length',
    label: 'Lining smaller by',
    help: 'Taken off the lining’s crown girth and height so that it does not bag.',
    group: 'lining',
    min: 0,
    max: 8,
    step: 0.5,
    inchStep: 1 / 32,
    default: 2.5,
    usual: [2, 3],
    when: { lining: true },
  },
} as const satisfies ParameterTable;

/** The same for hats without a band. */
export const hatLiningParameters = {
  lining: {
    ...liningParameters.lining,
    help: 'A full lining of the crown. Without it the seams inside are bound or neatened.',
  },
  liningTake: liningParameters.liningTake,
} as const satisfies ParameterTable;

export type LiningValues = ValuesOf<typeof liningParameters>;
