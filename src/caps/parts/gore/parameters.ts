import type { ParameterTable } from '../../parameter.ts';

/** What can be wished of a crown of gores. Usual ranges are common practice of the trade. */
export const goreParameters = {
  crownRoom: {
    kind: 'length',
    label: 'Crown room',
    help: 'How much longer the cap is, from edge to middle, than half the way over the head. More stands higher.',
    group: 'crown',
    min: -60,
    max: 140,
    step: 2,
    inchStep: 1 / 8,
    default: 70,
    usual: [40, 90],
  },
  goreWidest: {
    kind: 'ratio',
    label: 'Widest at',
    help: 'How far up the crown is widest, before it turns in to the middle. Higher looks boxier.',
    group: 'crown',
    min: 0.1,
    max: 0.5,
    step: 0.01,
    default: 0.35,
    usual: [0.3, 0.45],
  },
  gores: {
    kind: 'count',
    label: 'Gores',
    help: 'How many equal pieces the crown is made of. More make it rounder; four look square from above.',
    group: 'crown',
    min: 4,
    max: 12,
    step: 1,
    default: 8,
    usual: [6, 8],
  },
  frontSeam: {
    kind: 'choice',
    label: 'Centre front',
    help: 'What stands at the front: a seam between two gores, or the middle of one.',
    group: 'crown',
    options: [
      { value: 'seam', label: 'A seam' },
      { value: 'panel', label: 'The middle of a gore' },
    ],
    default: 'seam',
  },
} as const satisfies ParameterTable;

/** The same for crowns that may bulge out over their edge. */
export const fullGoreParameters = {
  goreFullness: {
    kind: 'length',
    label: 'Gore fullness',
    help: 'How much further round the crown is at its widest than at its edge. None fits close; more flops.',
    group: 'crown',
    min: 0,
    max: 300,
    step: 5,
    inchStep: 1 / 4,
    default: 90,
    usual: [60, 180],
  },
  ...goreParameters,
} as const satisfies ParameterTable;
