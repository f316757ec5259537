import { walker } from '../../pattern/chain.ts';
import type { Figure, Piece } from '../../pattern/piece.ts';
import type { Seam } from '../../pattern/seam.ts';
import { mm, words } from '../../words.ts';
import { type Opening, openingOf } from '../opening.ts';
import { band, turningGapMark } from '../parts/band/band.ts';
import { backSeam, bandEdgeSeam, topSeam } from '../parts/band/band-seams.ts';
import { topNotchesFor } from '../parts/band/top-notches.ts';
import { girthFigures, girthName, layerFigure, liningGirth } from '../parts/girth-figures.ts';
import { allowancesOf } from '../parts/seams/allowances.ts';
import type { CapDraft, Head, Style } from '../style.ts';
import { type BeretCrown, beretCrown } from './crown.ts';
import { beretForm } from './form.ts';
import { beretLining } from './lining.ts';
import { type BeretMeasures, beretFacts, beretMeasures, liningMeasures, topFigures } from './measures.ts';
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
  inside: ({ lining }) => [lining ? 'lining' : 'outer', 'interlining'],
  draft: (values, head) => draftBeret(values, head),
  form: beretForm,
  lining: beretLining,
};

const draftBeret = (values: BeretValues, head: Head): CapDraft => {
  const measures = beretMeasures(values, head);
  const opening = openingOf(head, values.ease);
  const girths = girthFigures(head, values.ease);
  const called = girthName(opening, opening.shell);

  // The crown, in shell cloth and in lining.
  const shell = beretCrown(values, {
    layer: 'shell',
    measures,
    girthName: called,
    figures: [...girths, ...topFigures(values, measures, called)],
  });
  const lining = values.lining ? liningCrown(values, opening, measures) : null;

  // The band, and what is inside it.
  const outer = outerBand(values, shell, opening.shell, girths);
  const inner = innerBand(values, lining, opening);

  return {
    finishedGirth: opening.finished,
    facts: beretFacts(values, opening, measures),
    insert: null,
    pattern: {
      pieces: [...shell.pieces, outer, ...(lining?.pieces ?? []), inner],
      seams: seamsOf(shell, lining, opening),
      allowances: allowancesOf(values),
    },
  };
};

const liningCrown = (values: BeretValues, opening: Opening, measures: BeretMeasures): BeretCrown => {
  const inside = liningMeasures(measures, values.liningTake, opening.lining);
  return beretCrown(values, {
    layer: 'lining',
    measures: inside,
    girthName: girthName(opening, opening.lining, 'lining'),
    figures: [liningGirth(opening, 'Round the edge', measures.rimGirth, values.liningTake).figure],
  });
};

/** The notches that a band needs at its upper edge. Those of a gathered edge stand at the quarters of both. */
const topNotches = (crown: BeretCrown) =>
  crown.gather === 0 ? { topNotches: topNotchesFor(walker(crown.pieces)(crown.lower)) } : {};

const outerBand = (
  values: BeretValues,
  crown: BeretCrown,
  girth: number,
  figures: readonly Figure[],
): Piece =>
  band({
    id: 'band',
    name: 'Band',
    cuts: [
      { cloth: 'outer', count: 1 },
      { cloth: 'interlining', count: 1 },
    ],
    girth,
    height: values.bandHeight,
    grain: values.bandGrain,
    visorStretch: 0,
    top: 'band',
    eighths: false,
    ...topNotches(crown),
    figures,
    notes: [words`Interlining is cut on the stitch line, without allowance.`],
  });

/** Of the lining band's upper edge left open: a hand and the soft crown pass (common practice). mm. */
const GAP = 90;

const innerBand = (values: BeretValues, lining: BeretCrown | null, opening: Opening): Piece => {
  const girth = opening.inner;
  const shared = {
    id: 'liningBand',
    girth,
    height: values.bandHeight,
    grain: values.bandGrain,
    visorStretch: 0,
    top: 'band',
    eighths: false,
    figures: layerFigure(opening, girth, lining ? 'lining' : 'facing'),
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

const seamsOf = (shell: BeretCrown, lining: BeretCrown | null, opening: Opening): readonly Seam[] => [
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
  bandEdgeSeam(lining !== null, opening),
];
