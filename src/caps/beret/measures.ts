import type { Figure } from '../../pattern/piece.ts';
import { exactMm, mm, words } from '../../words.ts';
import type { Fact, Head } from '../style.ts';
import type { BeretValues } from './parameters.ts';

/** What a beret's pieces are drawn from, mm and radians. */
export interface BeretMeasures {
  readonly finishedGirth: number;
  /** Round the edge of the top. */
  readonly rimGirth: number;
  readonly slope: number;
  /** Of the under ring, along the cloth. */
  readonly underWidth: number;
}

export const beretMeasures = ({ ease, spread, underSlope }: BeretValues, head: Head): BeretMeasures =>
  measuresOf(head.girth + ease, spread, underSlope);

const measuresOf = (finishedGirth: number, spread: number, slope: number): BeretMeasures => ({
  finishedGirth,
  rimGirth: finishedGirth + 2 * Math.PI * spread,
  slope,
  underWidth: spread / Math.cos(slope),
});

/** The lining's: less far round the edge by what is taken, at the same slope, so that it never turns too short to lie flat. */
export const liningMeasures = (
  { finishedGirth, rimGirth, slope }: BeretMeasures,
  take: number,
): BeretMeasures => measuresOf(finishedGirth, (rimGirth - take - finishedGirth) / (2 * Math.PI), slope);

/** By what part a disc's edge is longer than the band that it is gathered to. */
export const gatherOf = ({ rimGirth, finishedGirth }: BeretMeasures): number => rimGirth / finishedGirth - 1;

export const girthFigure = (values: BeretValues, head: Head): Figure => ({
  name: 'Finished girth',
  formula: 'head girth + ease',
  worked: words`${exactMm(head.girth)} + ${exactMm(values.ease)} = ${exactMm(head.girth + values.ease)}`,
});

export const topFigures = (
  values: BeretValues,
  { finishedGirth, rimGirth }: BeretMeasures,
): readonly Figure[] => [
  {
    name: 'Across the top',
    formula: 'finished girth ÷ π + 2 × spread',
    worked: words`${exactMm(finishedGirth)} ÷ 3.1416 + 2 × ${exactMm(values.spread)} = ${exactMm(rimGirth / Math.PI)}`,
  },
  {
    name: 'Round the edge',
    formula: 'π × across the top',
    worked: words`3.1416 × ${exactMm(rimGirth / Math.PI)} = ${exactMm(rimGirth)}`,
  },
];

/** What stands in plain sight: how far across the top is, and how far round. */
export const beretFacts = (values: BeretValues, measures: BeretMeasures): readonly Fact[] => {
  const [across, round] = topFigures(values, measures);
  return [
    {
      id: 'top',
      name: 'Top',
      figure: words`${mm(measures.rimGirth / Math.PI)} across`,
      title: 'Across the top, laid flat',
      reckoning: [across!],
    },
    {
      id: 'crown',
      name: 'Edge',
      figure: words`${mm(measures.rimGirth)}`,
      title: 'Round the edge of the top',
      reckoning: [across!, round!],
    },
  ];
};
