import { inches } from '../../units.ts';
import type { ParameterTable, ValuesOf } from '../parameter.ts';
import { easeParameter } from '../parts/ease.ts';
import { allowanceParameters } from '../parts/seams/parameters.ts';
import { stripGrainParameter } from '../parts/strip-grain.ts';
import { crownHeightParameter } from '../parts/top-and-sides/parameters.ts';

const allowances = allowanceParameters('goreAllowance', 'sideAllowance', 'lowerAllowance', 'hemAllowance');

/** Everything that can be wished of a scrub cap. Defaults and usual ranges are common practice of the trade. */
export const scrubParameters = {
  ease: easeParameter([0, 10], inches(1 / 4)),
  crownHeight: crownHeightParameter([108, 130], inches(4.75)),
  stripWidth: {
    kind: 'length',
    label: 'Centre strip width',
    help: 'The strip that runs over the head from front to back, the same width all along.',
    group: 'crown',
    min: 80,
    max: 150,
    step: 2,
    inchStep: 1 / 8,
    default: inches(4.25),
    usual: [inches(4), inches(5)],
  },
  backTie: {
    kind: 'choice',
    label: 'Drawn in behind by',
    help: 'Elastic in the casing grips by itself; ties let one cap fit several heads.',
    group: 'back',
    options: [
      { value: 'elastic', label: 'Elastic' },
      { value: 'ties', label: 'Ties' },
    ],
    default: 'elastic',
  },
  casingHeight: {
    kind: 'length',
    label: 'Casing height',
    help: 'The strip inside the lower edge that the elastic or the ties run in.',
    group: 'back',
    min: 12,
    max: 50,
    step: 1,
    inchStep: 1 / 8,
    default: inches(1),
    usual: [20, 32],
  },
  casingGrain: stripGrainParameter('casing', 'back'),
  elasticLength: {
    kind: 'length',
    label: 'Elastic length',
    help: 'Cut this long and stretched along the back of the casing. Shorter grips more.',
    group: 'back',
    min: 90,
    max: 240,
    step: 5,
    inchStep: 1 / 4,
    default: inches(6),
    usual: [130, 180],
    when: { backTie: 'elastic' },
  },
  tieLength: {
    kind: 'length',
    label: 'Length of a tie to bow with',
    help: 'What comes out of the casing at the centre back.',
    group: 'back',
    min: 120,
    max: 400,
    step: 10,
    inchStep: 1 / 2,
    default: inches(10),
    usual: [200, 300],
    when: { backTie: 'ties' },
  },
  tieWidth: {
    kind: 'length',
    label: 'Tie width',
    help: 'Finished, folded along its middle.',
    group: 'back',
    min: 8,
    max: 25,
    step: 1,
    inchStep: 1 / 16,
    default: inches(1 / 2),
    usual: [10, 16],
    when: { backTie: 'ties' },
  },
  ...allowances,
  sideAllowance: { ...allowances.sideAllowance, when: { backTie: 'elastic' } },
} as const satisfies ParameterTable;

export type ScrubValues = ValuesOf<typeof scrubParameters>;
