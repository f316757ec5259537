import { openingOf } from '../opening.ts';
import { topButtonPieces } from '../parts/button/top-button.ts';
import { goreFacts } from '../parts/gore/gore-facts.ts';
import { goreLayers } from '../parts/gore/gore-layers.ts';
import { allowancesOf } from '../parts/seams/allowances.ts';
import { turnedIn } from '../parts/sweatband/turned-in.ts';
import type { CapDraft, Head, Style } from '../style.ts';
import { skullForm } from './form.ts';
import { skullLining } from './lining.ts';
import { type SkullValues, skullParameters } from './parameters.ts';
import { skullProblems } from './problems.ts';

/** Close gores, finished at their own lower edge. */
export const skull: Style<SkullValues> = {
  id: 'skull',
  name: 'Skull cap',
  alsoCalled: ['beanie', 'under-helmet cap', 'dome cap'],
  tells: 'Close gores that follow the head, with neither band nor visor.',
  parameters: skullParameters,
  starts: [
    { name: 'High and small', values: { gores: 6, crownRoom: -34, goreWidest: 0.1 } },
    { name: 'Down to the ears', values: { gores: 6, crownRoom: 10, goreWidest: 0.15 } },
    { name: 'Four quick gores', values: { gores: 4, crownRoom: -8, goreWidest: 0.1, lining: false } },
  ],
  problems: skullProblems,
  inside: ({ edge, lining }) => [
    edge === 'facing' ? 'outer' : 'lining',
    ...(lining ? ['lining' as const] : []),
  ],
  draft: (values, head) => draftSkull(values, head),
  form: skullForm,
  lining: skullLining,
};

const draftSkull = (values: SkullValues, head: Head): CapDraft => {
  const opening = openingOf(head, values.ease);
  const layers = goreLayers(values, head, 0, 'lower');
  const { shell, lining } = layers;
  const edge = turnedIn({
    ...layers,
    visor: null,
    kind: values.edge,
    opening,
    height: values.sweatbandHeight,
  });
  return {
    finishedGirth: opening.finished,
    facts: goreFacts(values, head, 0),
    insert: null,
    pattern: {
      pieces: [...shell.pieces, ...topButtonPieces(values), ...(lining?.pieces ?? []), edge.sweatband],
      seams: [...shell.seams, ...(lining?.seams ?? []), ...edge.seams],
      allowances: allowancesOf(values),
    },
  };
};
