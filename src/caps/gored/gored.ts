import { type Opening, openingOf } from '../opening.ts';
import { topButtonPieces } from '../parts/button/top-button.ts';
import { goreFacts } from '../parts/gore/gore-facts.ts';
import { type GoreLayers, goreLayers } from '../parts/gore/gore-layers.ts';
import { allowancesOf } from '../parts/seams/allowances.ts';
import { turnedIn } from '../parts/sweatband/turned-in.ts';
import { type VisorParts, visorParts } from '../parts/visor/visor-parts.ts';
import type { CapDraft, Head, Style } from '../style.ts';
import { banded, type GoredEdge } from './banded.ts';
import { goredForm } from './form.ts';
import { goredLining } from './lining.ts';
import { bandOf, type GoredValues, goredParameters } from './parameters.ts';
import { goredProblems } from './problems.ts';

/** A crown of equal gores, a band or a sweatband, a visor if wished, a full lining, a covered button. */
export const gored: Style<GoredValues> = {
  id: 'gored',
  name: 'Gored cap',
  alsoCalled: ['newsboy', 'eight-panel', 'apple cap', 'jockey cap'],
  tells: 'Equal gores run from the band up to a button in the middle of the top.',
  parameters: goredParameters,
  starts: [
    {
      name: 'Full on a band',
      values: { gores: 8, goreFullness: 130, crownRoom: 86, goreWidest: 0.35, edge: 'band' },
    },
    {
      name: 'Close, six gores',
      values: { gores: 6, goreFullness: 0, crownRoom: 14, goreWidest: 0.14, edge: 'sweatband' },
    },
    {
      name: 'Five gores, one in front',
      values: {
        gores: 5,
        frontSeam: 'panel',
        goreFullness: 20,
        crownRoom: 24,
        goreWidest: 0.2,
        edge: 'sweatband',
      },
    },
    {
      name: 'Soft, without a visor',
      values: { gores: 8, goreFullness: 70, crownRoom: 60, goreWidest: 0.3, visorSource: 'none' },
    },
  ],
  problems: goredProblems,
  inside: ({ edge, lining }) =>
    edge === 'band'
      ? [lining ? 'lining' : 'outer', 'interlining']
      : lining
        ? ['lining', 'lining']
        : ['lining'],
  draft: (values, head) => draftGored(values, head),
  form: goredForm,
  lining: goredLining,
};

const draftGored = (values: GoredValues, head: Head): CapDraft => {
  const opening = openingOf(head, values.ease);
  const visor = visorParts(values, { ...head, girth: opening.shell });

  // The gores, in shell cloth and in lining.
  const banding = values.edge === 'band';
  const layers = goreLayers(values, head, bandOf(values), banding ? 'band' : 'lower');
  const { shell, lining } = layers;

  // What is below them.
  const edge = banding ? banded(values, head, layers, visor) : sweatbanded(values, opening, layers, visor);

  return {
    finishedGirth: opening.finished,
    facts: goreFacts(values, head, bandOf(values)),
    insert: visor.insert,
    pattern: {
      pieces: [
        ...shell.pieces,
        ...topButtonPieces(values),
        ...edge.outside,
        ...(lining?.pieces ?? []),
        ...edge.inside,
      ],
      seams: [...edge.first, ...shell.seams, ...(lining?.seams ?? []), ...edge.last],
      allowances: allowancesOf(values),
    },
  };
};

const sweatbanded = (
  values: GoredValues,
  opening: Opening,
  layers: GoreLayers,
  visor: VisorParts,
): GoredEdge => {
  const edge = turnedIn({ ...layers, visor, kind: 'sweatband', opening, height: values.sweatbandHeight });
  return { outside: edge.visor, inside: [edge.sweatband], first: edge.first, last: edge.seams };
};
