import { degrees } from '../../units.ts';
import { brimFact } from '../parts/brim/brim-figures.ts';
import { jointsAside } from '../parts/brim/sections.ts';
import { brimRatio } from '../parts/brimmed/brim-ratio.ts';
import { brimmed } from '../parts/brimmed/brimmed.ts';
import { withTurningGap } from '../parts/brimmed/turning-gap.ts';
import { allowancesOf } from '../parts/seams/allowances.ts';
import { tipFact } from '../parts/tip/tip-facts.ts';
import { narrowingLayers } from '../parts/tipped-crown/narrowing-layers.ts';
import type { CapDraft, Head, Style } from '../style.ts';
import { bucketForm } from './form.ts';
import { bucketLining } from './lining.ts';
import { type BucketValues, bucketParameters } from './parameters.ts';
import { bucketProblems } from './problems.ts';

/** A tip, a side that narrows upwards, a stitched brim all round, a lining with a sweatband or a second hat inside. */
export const bucket: Style<BucketValues> = {
  id: 'bucket',
  name: 'Bucket hat',
  alsoCalled: ['fishing hat', 'rain hat', 'gardening hat'],
  tells: 'A flat tip on a sloping side, and a stitched brim that hangs down all round.',
  parameters: bucketParameters,
  starts: [
    {
      name: 'Steep and snug',
      values: { ease: 8, brimWidth: 60, brimDrop: degrees(55), sideBandHeight: 90, crownTaper: 38 },
    },
    {
      name: 'Both ways out',
      values: { reversible: true, brimWidth: 66, brimDrop: degrees(45), brimBody: 'none' },
    },
    {
      name: 'For a child, with room to grow',
      values: { ease: 20, brimWidth: 50, brimDrop: degrees(40), sideBandHeight: 76, crownTaper: 30 },
    },
  ],
  problems: bucketProblems,
  inside: ({ reversible, lining }) => (reversible ? ['outer'] : lining ? ['lining', 'lining'] : ['lining']),
  draft: (values, head) => draftBucket(values, head),
  form: bucketForm,
  lining: bucketLining,
};

const draftBucket = (values: BucketValues, head: Head): CapDraft => {
  const { reversible } = values;
  const { girths, shell, lining, opening, rim } = narrowingLayers({
    values: { ...values, lining: values.lining || reversible },
    head,
    ratio: brimRatio(values, head),
    twice: reversible,
    seamsBelow: jointsAside(values),
  });
  const { slope, ...hat } = brimmed({
    shell,
    lining: lining && reversible ? withTurningGap(lining) : lining,
    girths,
    opening,
    values: reversible ? { ...values, brimUnder: 'outer' } : values,
    reversible,
    sweatbandHeight: values.sweatbandHeight,
  });
  return {
    finishedGirth: girths.finished,
    facts: [tipFact(rim), brimFact(slope)],
    insert: null,
    pattern: { ...hat, allowances: allowancesOf(values) },
  };
};
