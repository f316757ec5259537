import type { ParameterTable, ValuesOf } from '../../parameter.ts';

/** What can be wished of the arch at the back of a cap that lets out. Defaults and usual ranges are common practice. */
export const backOpeningParameters = {
  openingWidth: {
    kind: 'length',
    label: 'Opening width',
    help: 'How wide the arch at the back is along the lower edge.',
    group: 'back',
    min: 60,
    max: 110,
    step: 1,
    inchStep: 1 / 8,
    default: 85,
    usual: [75, 95],
  },
  openingHeight: {
    kind: 'length',
    label: 'Opening height',
    help: 'How far the arch goes up the centre back seam.',
    group: 'back',
    min: 30,
    max: 75,
    step: 1,
    inchStep: 1 / 8,
    default: 50,
    usual: [45, 60],
  },
} as const satisfies ParameterTable;

export type BackOpeningValues = ValuesOf<typeof backOpeningParameters>;
