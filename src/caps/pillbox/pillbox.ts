import type { Figure, Piece } from '../../pattern/piece.ts';
import { exactMm, mm, radians, type Words, words } from '../../words.ts';
import { allowancesOf } from '../parts/seams/allowances.ts';
import { stiffenerInside } from '../parts/stiffener-inside.ts';
import { turnedIn } from '../parts/sweatband/turned-in.ts';
import { tipFact } from '../parts/tip/tip-facts.ts';
import { narrowingLayers, narrowingStrips } from '../parts/tipped-crown/narrowing-layers.ts';
import type { CapDraft, Head, Style } from '../style.ts';
import { pillboxLining } from './lining.ts';
import { type PillboxValues, pillboxParameters } from './parameters.ts';
import { pillboxProblems } from './problems.ts';
import { ratioOf } from './ratio.ts';

/** A stiff tip and side without brim or visor, straight up or a little narrower above, lined, with a sweatband. */
export const pillbox: Style<PillboxValues> = {
  id: 'pillbox',
  name: 'Pillbox',
  alsoCalled: ['toque', 'bellhop cap'],
  tells: 'A flat tip on an upright side, stiff, with neither brim nor visor.',
  parameters: pillboxParameters,
  starts: [
    { name: 'Straight up', values: { crownTaper: 0, sideBandHeight: 64, tipShape: 'oval' } },
    { name: 'Low, a little narrower above', values: { crownTaper: 26, sideBandHeight: 50 } },
    {
      name: 'Soft and round',
      values: { tipShape: 'round', crownBody: 'interlining', sideBandHeight: 80, sideBandPieces: '2' },
    },
  ],
  problems: pillboxProblems,
  inside: ({ lining, crownBody }) => [
    'lining',
    ...(lining ? (['lining'] as const) : []),
    ...(crownBody === 'none' ? [] : [crownBody]),
  ],
  draft: (values, head) => draftPillbox(values, head),
  form: (values, head) => ({ strips: narrowingStrips(values, head, ratioOf(values, head)) }),
  lining: pillboxLining,
};

const draftPillbox = (values: PillboxValues, head: Head): CapDraft => {
  const body = values.crownBody === 'none' ? undefined : values.crownBody;
  const { girths, rim, shell, lining } = narrowingLayers({
    values,
    head,
    ratio: ratioOf(values, head),
    inside: body,
  });
  const edge = turnedIn({
    shell,
    lining,
    visor: null,
    kind: 'sweatband',
    opening: girths,
    height: values.sweatbandHeight,
  });
  return {
    finishedGirth: girths.finished,
    facts: [
      tipFact(rim),
      {
        id: 'side',
        name: 'Side',
        figure: words`${mm(values.sideBandHeight)} high`,
        title: 'How the side stands',
        reckoning: [leanFigure(values)],
      },
    ],
    insert: null,
    pattern: {
      pieces: [
        ...(body ? shell.pieces.map((piece) => withNote(piece, bodyNotes[body])) : shell.pieces),
        ...(lining?.pieces ?? []),
        edge.sweatband,
      ],
      seams: [...shell.seams, ...(lining?.seams ?? []), ...edge.seams],
      allowances: allowancesOf(values),
    },
  };
};

const bodyNotes = {
  stiffener: words`${stiffenerInside}.`,
  interlining: words`Interlining is cut on the stitch line, without allowance.`,
} as const satisfies Readonly<Record<string, Words>>;

const withNote = (piece: Piece, note: Words): Piece => ({ ...piece, notes: [...piece.notes, note] });

const leanFigure = ({ crownTaper, sideBandHeight }: PillboxValues): Figure => ({
  name: 'Lean from upright',
  formula: 'arcsine of narrower at the top by ÷ (2π × height)',
  worked: words`arcsin(${exactMm(crownTaper)} ÷ (6.2832 × ${exactMm(sideBandHeight)})) = ${radians(Math.asin(crownTaper / (2 * Math.PI * sideBandHeight)))}`,
});
