import type { ParameterTable, ValuesOf } from '../../parameter.ts';

/** What can be wished of the covered button on top of a crown. Sizes are common practice of the trade. */
export const topButtonParameters = {
  topButton: {
    kind: 'switch',
    label: 'Button on top',
    help: 'A button covered in the cap’s cloth, where the gores meet.',
    group: 'crown',
    default: true,
  },
  topButtonDiameter: {
    kind: 'length',
    label: 'Top button diameter',
    help: 'Across the button; the disc of cloth that covers it is twice as wide.',
    group: 'crown',
    min: 10,
    max: 35,
    step: 1,
    inchStep: 1 / 16,
    default: 19,
    usual: [15, 22],
    when: { topButton: true },
  },
} as const satisfies ParameterTable;

export type TopButtonValues = ValuesOf<typeof topButtonParameters>;
