import type { ParameterTable, ValuesOf } from '../../parameter.ts';

/** How an opening at the back is closed. Defaults and usual ranges are common practice of the trade. */
export const backStrapParameters = {
  backFastening: {
    kind: 'choice',
    label: 'Back fastening',
    help: 'A strap in two halves that lets the cap out, or an elastic that gives by itself.',
    group: 'back',
    options: [
      { value: 'strap', label: 'Strap' },
      { value: 'elastic', label: 'Elastic' },
    ],
    default: 'strap',
  },
  backStrapWidth: {
    kind: 'length',
    label: 'Back strap width',
    help: 'Finished, from edge to edge.',
    group: 'back',
    min: 15,
    max: 32,
    step: 1,
    inchStep: 1 / 16,
    default: 20,
    usual: [18, 25],
  },
  backRoom: {
    kind: 'length',
    label: 'Room to let out',
    help: 'How much larger the cap becomes when the strap is let out all the way.',
    group: 'back',
    min: 0,
    max: 40,
    step: 1,
    inchStep: 1 / 8,
    default: 30,
    usual: [20, 40],
    when: { backFastening: 'strap' },
  },
  backOverlap: {
    kind: 'length',
    label: 'Strap overlap',
    help: 'How far each half still passes the centre back when the strap is let out.',
    group: 'back',
    min: 10,
    max: 40,
    step: 1,
    inchStep: 1 / 8,
    default: 12,
    usual: [10, 20],
    when: { backFastening: 'strap' },
  },
  elasticStretch: {
    kind: 'ratio',
    label: 'Elastic shorter by',
    help: 'How much shorter the elastic is than the opening: more draws the back in further.',
    group: 'back',
    min: 0.1,
    max: 0.5,
    step: 0.05,
    default: 0.3,
    usual: [0.2, 0.4],
    when: { backFastening: 'elastic' },
  },
} as const satisfies ParameterTable;

export type BackStrapValues = ValuesOf<typeof backStrapParameters>;
