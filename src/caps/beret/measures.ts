import type { Figure } from '../../pattern/piece.ts';
import { exactMm, mm, words } from '../../words.ts';
import { type Opening, openingOf } from '../opening.ts';
import { girthName, shellFigure } from '../parts/girth-figures.ts';
import type { Fact, Head } from '../style.ts';
import type { BeretValues } from './parameters.ts';

/** What a beret's pieces are drawn from, mm and radians. */
export interface BeretMeasures {
  /** Round the band. */
  readonly openingGirth: number;
  /** Round the edge of the top. */
  readonly rimGirth: number;
  readonly slope: number;
  /** Of the under ring, along the cloth. */
  readonly underWidth: number;
}

export const beretMeasures = ({ ease, spread, underSlope }: BeretValues, head: Head): BeretMeasures =>
  measuresOf(openingOf(head, ease).shell, spread, underSlope);

const measuresOf = (openingGirth: number, spread: number, slope: number): BeretMeasures => ({
  openingGirth,
  rimGirth: openingGirth + 2 * Math.PI * spread,
  slope,
  underWidth: spread / Math.cos(slope),
});

/**
 * The lining's, of its own girth: as much less far round the edge, and less by what is taken, at the same slope, so that it never
 * turns too short to lie flat.
 */
export const liningMeasures = (
  { openingGirth, rimGirth, slope }: BeretMeasures,
  take: number,
  girth: number,
): BeretMeasures => measuresOf(girth, (rimGirth - take - openingGirth) / (2 * Math.PI), slope);

/** By what part a disc's edge is longer than the band that it is gathered to. */
export const gatherOf = ({ rimGirth, openingGirth }: BeretMeasures): number => rimGirth / openingGirth - 1;

export const topFigures = (
  values: BeretValues,
  { openingGirth, rimGirth }: BeretMeasures,
  girthName: string,
): readonly Figure[] => [
  {
    name: 'Across the top',
    formula: `${girthName} ÷ π + 2 × spread`,
    worked: words`${exactMm(openingGirth)} ÷ 3.1416 + 2 × ${exactMm(values.spread)} = ${exactMm(rimGirth / Math.PI)}`,
  },
  {
    name: 'Round the edge',
    formula: 'π × across the top',
    worked: words`3.1416 × ${exactMm(rimGirth / Math.PI)} = ${exactMm(rimGirth)}`,
  },
];

/** What stands in plain sight: how far across the top is, and how far round. */
export const beretFacts = (
  values: BeretValues,
  opening: Opening,
  measures: BeretMeasures,
): readonly Fact[] => {
  const [across, round] = topFigures(values, measures, girthName(opening, opening.shell));
  const shell = shellFigure(opening);
  return [
    {
      id: 'top',
      name: 'Top',
      figure: words`${mm(measures.rimGirth / Math.PI)} across`,
      title: 'Across the top, laid flat',
      reckoning: [...shell, across!],
    },
    {
      id: 'crown',
      name: 'Edge',
      figure: words`${mm(measures.rimGirth)}`,
      title: 'Round the edge of the top',
      reckoning: [...shell, across!, round!],
    },
  ];
};
