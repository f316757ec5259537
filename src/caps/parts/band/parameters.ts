import { inches } from '../../../units.ts';
import type { ParameterTable } from '../../parameter.ts';
import { stripGrainParameter } from '../strip-grain.ts';

/** What can be wished of the band that grips the head. */
export const bandParameters = {
  bandHeight: {
    kind: 'length',
    label: 'Band height',
    help: 'The straight band that grips the head.',
    group: 'band',
    min: 20,
    max: 70,
    step: 2,
    inchStep: 1 / 8,
    default: inches(1.5),
    usual: [25, 45],
  },
  bandGrain: stripGrainParameter('band', 'band'),
} as const satisfies ParameterTable;
