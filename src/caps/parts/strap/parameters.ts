import { inches } from '../../../units.ts';
import type { ParameterTable, ValuesOf } from '../../parameter.ts';

/** What can be wished of the strap above a visor. */
export const strapParameters = {
  strap: {
    kind: 'switch',
    label: 'Strap',
    help: 'A strap above the visor, held by two buttons.',
    group: 'strap',
    default: true,
  },
  strapWidth: {
    kind: 'length',
    label: 'Strap width',
    help: 'Finished, from edge to edge.',
    group: 'strap',
    min: 8,
    max: 30,
    step: 1,
    inchStep: 1 / 16,
    default: inches(1 / 2),
    usual: [10, 18],
    when: { strap: true },
  },
  buttonDiameter: {
    kind: 'length',
    label: 'Button diameter',
    help: 'Across the button; the buttonhole follows from it.',
    group: 'strap',
    min: 8,
    max: 25,
    step: 1,
    inchStep: 1 / 16,
    default: 12,
    when: { strap: true },
  },
  buttonThickness: {
    kind: 'length',
    label: 'Button thickness',
    help: 'Added to the buttonhole so that the button passes.',
    group: 'strap',
    min: 1,
    max: 8,
    step: 0.5,
    inchStep: 1 / 32,
    default: 3,
    when: { strap: true },
  },
} as const satisfies ParameterTable;

export type StrapValues = ValuesOf<typeof strapParameters>;
