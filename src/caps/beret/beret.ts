import { walker } from '../../pattern/chain.ts';
import type { Piece } from '../../pattern/piece.ts';
import type { Seam } from '../../pattern/seam.ts';
import { exactMm, mm, words } from '../../words.ts';
import { band, turningGapMark } from '../parts/band/band.ts';
import { backSeam, topSeam } from '../parts/band/band-seams.ts';
import { topNotchesFor } from '../parts/band/top-notches.ts';
import { allowancesOf } from '../parts/seams/allowances.ts';
import { one, ring } from '../parts/seams/seam.ts';
import type { CapDraft, Head, Style } from '../style.ts';
import { type BeretCrown, beretCrown } from './crown.ts';
import { beretForm } from './form.ts';
import { beretFacts, beretMeasures, girthFigure, liningMeasures, topFigures } from './measures.ts';
import { type BeretValues, beretParameters } from './parameters.ts';
import { beretProblems } from './problems.ts';

/** A broad soft top, an under ring or gores that bring it back to the head, a narrow band, a full lining. */
export const beret: Style<BeretValues> = {
  id: 'beret',
  name: 'Beret',
  alsoCalled: ['tam', 'tam-o’-shanter', 'basque'],
  tells: 'A flat soft top, broader than the head all round, drawn in underneath to a narrow band.',
  parameters: beretParameters,
  starts: [
    {
      name: 'Neat and flat',
      values: { beretCrown: 'disc', spread: 35, underSlope: 0, underPieces: '2', bandHeight: 20, stem: true },
    },
    {
      name: 'Slouching',
      values: { beretCrown: 'disc', spread: 75, underSlope: 0.5, underPieces: '1', bandHeight: 30 },
    },
    {
      name: 'Tam in eight gores',
      values: { beretCrown: 'gored', gores: 8, spread: 60, underSlope: 0.35, bandHeight: 32 },
    },
    {
      name: 'One gathered disc',
      values: { beretCrown: 'gathered', spread: 80, bandHeight: 25 },
    },
  ],
  problems: beretProblems,
  draft: (values, head) => draftBeret(values, head),
  form: beretForm,
};

const draftBeret = (values: BeretValues, head: Head): CapDraft => {
  const measures = beretMeasures(values, head);
  const girth = girthFigure(values, head);

  // The crown, in shell cloth and in lining.
  const shell = beretCrown(values, {
    layer: 'shell',
    measures,
    figures: [girth, ...topFigures(values, measures)],
  });
  const lining = values.lining ? liningCrown(values, measures) : null;

  // The band, and what is inside it.
  const outer = outerBand(values, shell, measures.finishedGirth);
  const inner = innerBand(values, lining, measures.finishedGirth);

  return {
    finishedGirth: measures.finishedGirth,
    facts: beretFacts(values, measures),
    insert: null,
    pattern: {
      pieces: [...shell.pieces, outer, ...(lining?.pieces ?? []), inner],
      seams: seamsOf(shell, lining),
      allowances: allowancesOf(values),
    },
  };
};

const liningCrown = (values: BeretValues, measures: ReturnType<typeof beretMeasures>): BeretCrown => {
  const inside = liningMeasures(measures, values.liningTake);
  return beretCrown(values, {
    layer: 'lining',
    measures: inside,
    figures: [
      {
        name: 'Round the edge of the lining',
        formula: 'round the edge − lining smaller by',
        worked: words`${exactMm(measures.rimGirth)} − ${exactMm(values.liningTake)} = ${exactMm(inside.rimGirth)}`,
      },
    ],
  });
};

/** The notches that a band needs at its upper edge. Those of a gathered edge stand at the quarters of both. */
const topNotches = (crown: BeretCrown) =>
  crown.gather === 0 ? { topNotches: topNotchesFor(walker(crown.pieces)(crown.lower)) } : {};

const outerBand = (values: BeretValues, crown: BeretCrown, girth: number): Piece =>
  band({
    id: 'band',
    name: 'Band',
    cuts: [
      { cloth: 'outer', count: 1 },
      { cloth: 'interlining', count: 1 },
    ],
    girth,
    height: values.bandHeight,
    visorStretch: 0,
    top: 'band',
    eighths: false,
    ...topNotches(crown),
    notes: [words`Interlining is cut on the stitch line, without allowance.`],
  });

/** Of the lining band's upper edge left open: a hand and the soft crown pass (common practice). mm. */
const GAP = 90;

const innerBand = (values: BeretValues, lining: BeretCrown | null, girth: number): Piece => {
  const shared = {
    id: 'liningBand',
    girth,
    height: values.bandHeight,
    visorStretch: 0,
    top: 'band',
    eighths: false,
  } as const;
  return lining
    ? band({
        ...shared,
        name: 'Lining band',
        cuts: [{ cloth: 'lining', count: 1 }],
        ...topNotches(lining),
        marks: [turningGapMark(girth, values.bandHeight, GAP)],
        notes: [words`Leave ${mm(GAP)} of the upper edge open to turn the beret through.`],
      })
    : band({
        ...shared,
        name: 'Band facing',
        cuts: [{ cloth: 'outer', count: 1 }],
        notes: [words`The upper edge is neatened and caught down by hand over the band seam.`],
      });
};

const seamsOf = (shell: BeretCrown, lining: BeretCrown | null): readonly Seam[] => [
  ...shell.seams,
  backSeam('back', 'Band back seam', 'band'),
  topSeam('bandToCrown', 'Crown to band', shell.lower, 'band', shell.gather),
  ...(lining
    ? [
        ...lining.seams,
        backSeam('liningBack', 'Lining band back seam', 'liningBand'),
        topSeam('liningBandToCrown', 'Lining crown to band', lining.lower, 'liningBand', lining.gather),
      ]
    : [backSeam('liningBack', 'Facing back seam', 'liningBand')]),
  ring(
    'lowerEdge',
    lining ? 'Band to lining band, lower edge' : 'Band to facing, lower edge',
    'lower',
    [one('band', 'bottom')],
    [one('liningBand', 'bottom')],
  ),
];
