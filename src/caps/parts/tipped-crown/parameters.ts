import { inches } from '../../../units.ts';
import type { ParameterTable } from '../../parameter.ts';

/** What can be wished of a flat top with a side band. Usual ranges are those of a flat-top cap: common practice. */
export const tippedCrownParameters = {
  sideBandHeight: {
    kind: 'length',
    label: 'Side band height',
    help: 'From its lower edge up to the edge of the top, along the cloth.',
    group: 'crown',
    min: 30,
    max: 110,
    step: 2,
    inchStep: 1 / 8,
    default: inches(2.5),
    usual: [38, 64],
  },
  tipRatio: {
    kind: 'ratio',
    label: 'Tip breadth to length',
    help: '100 % is a round top; less is an oval, longer from front to back.',
    group: 'crown',
    min: 0.72,
    max: 1,
    step: 0.01,
    default: 1,
    usual: [0.85, 1],
  },
} as const satisfies ParameterTable;

/** The same for crowns that stand straight up from the head or narrow towards the top. */
export const narrowingCrownParameters = {
  sideBandHeight: { ...tippedCrownParameters.sideBandHeight, default: 88, usual: [76, 102] },
  crownTaper: {
    kind: 'length',
    label: 'Narrower at the top by',
    help: 'How much less it is round the top than round the head. None stands straight up.',
    group: 'crown',
    min: 0,
    max: 120,
    step: 2,
    inchStep: 1 / 8,
    default: inches(1.5),
    usual: [25, 60],
  },
  sideBandPieces: {
    kind: 'choice',
    label: 'Side band pieces',
    help: 'One piece has only a seam at the back; halves and quarters use scraps and print on fewer sheets.',
    group: 'crown',
    options: [
      { value: '1', label: '1 ring' },
      { value: '2', label: '2 halves' },
      { value: '4', label: '4 quarters' },
    ],
    default: '1',
  },
} as const satisfies ParameterTable;
