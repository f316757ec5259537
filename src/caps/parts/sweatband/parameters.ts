import type { ParameterTable } from '../../parameter.ts';

/** What can be wished of a sweatband. */
export const sweatbandParameters = {
  sweatbandHeight: {
    kind: 'length',
    label: 'Sweatband height',
    help: 'The strip inside the lower edge that lies against the head.',
    group: 'band',
    min: 20,
    max: 50,
    step: 1,
    inchStep: 1 / 8,
    default: 32,
    usual: [25, 38],
  },
} as const satisfies ParameterTable;
