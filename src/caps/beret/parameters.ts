import { degrees, inches } from '../../units.ts';
import type { ParameterTable, ValuesOf } from '../parameter.ts';
import { bandParameters } from '../parts/band/parameters.ts';
import { easeParameter } from '../parts/ease.ts';
import { goreParameters } from '../parts/gore/parameters.ts';
import { liningParameters } from '../parts/lining/parameters.ts';
import { allowanceParameters } from '../parts/seams/parameters.ts';

const underneath = { beretCrown: ['disc', 'gored'] } as const;
const disc = { beretCrown: 'disc' } as const;
const gored = { beretCrown: 'gored' } as const;

const allowances = allowanceParameters(
  'crownAllowance',
  'goreAllowance',
  'sideAllowance',
  'bandAllowance',
  'lowerAllowance',
);

/** Everything that can be wished of a beret. Defaults and usual ranges are common practice of the trade. */
export const beretParameters = {
  ease: easeParameter([0, 10], inches(1 / 4)),
  spread: {
    kind: 'length',
    label: 'Spread',
    help: 'How far the top reaches out past the head all round when it lies flat.',
    group: 'crown',
    min: 15,
    max: 110,
    step: 2,
    inchStep: 1 / 8,
    default: inches(2),
    usual: [30, 80],
  },
  underSlope: {
    kind: 'angle',
    label: 'Under ring slope',
    help: 'How steeply the under side comes down from the edge to the band. At 0° it lies flat like a plate.',
    group: 'crown',
    min: 0,
    max: degrees(60),
    step: degrees(1),
    default: degrees(20),
    usual: [0, degrees(35)],
    when: underneath,
  },
  beretCrown: {
    kind: 'choice',
    label: 'Made of',
    help: 'A top and a ring under it with a seam round the edge; gores from the band over the edge to the middle; or one disc gathered to the band.',
    group: 'crown',
    options: [
      { value: 'disc', label: 'Top and under ring' },
      { value: 'gored', label: 'Gores' },
      { value: 'gathered', label: 'One gathered disc' },
    ],
    default: 'disc',
  },
  underPieces: {
    kind: 'choice',
    label: 'Under ring pieces',
    help: 'One ring has a single seam at the back; halves and quarters use less cloth, and can lie quite flat.',
    group: 'crown',
    options: [
      { value: '1', label: '1 ring' },
      { value: '2', label: '2 halves' },
      { value: '4', label: '4 quarters' },
    ],
    default: '2',
    when: disc,
  },
  gores: { ...goreParameters.gores, when: gored },
  frontSeam: { ...goreParameters.frontSeam, when: gored },
  bandHeight: { ...bandParameters.bandHeight, default: inches(1), usual: [20, 35] },
  bandGrain: bandParameters.bandGrain,
  stem: {
    kind: 'switch',
    label: 'Stem',
    help: 'A short loop of cloth or cord in the middle of the top.',
    group: 'crown',
    default: true,
  },
  ...liningParameters,
  ...allowances,
  crownAllowance: { ...allowances.crownAllowance, when: disc },
  goreAllowance: { ...allowances.goreAllowance, when: gored },
} as const satisfies ParameterTable;

export type BeretValues = ValuesOf<typeof beretParameters>;
