import { pathLength } from '../../geometry/measure.ts';
import { line } from '../../geometry/path.ts';
import { point } from '../../geometry/point.ts';
import type { Pattern } from '../../pattern/pattern.ts';
import type { Figure, PieceMark } from '../../pattern/piece.ts';
import { exactMm, mm, ratio, thickness, words } from '../../words.ts';
import { openingOf } from '../opening.ts';
import { girthFigures } from '../parts/girth-figures.ts';
import { allowancesOf } from '../parts/seams/allowances.ts';
import { turnedIn } from '../parts/sweatband/turned-in.ts';
import { frontBow, type OpeningCurve } from '../parts/top-and-sides/opening-curve.ts';
import { sideDepth } from '../parts/top-and-sides/side-depth.ts';
import { topAndSides } from '../parts/top-and-sides/top-and-sides.ts';
import type { TopAndSidesShape } from '../parts/top-and-sides/top-and-sides-shape.ts';
import { visorParts } from '../parts/visor/visor-parts.ts';
import type { CapDraft, Fact, Head, Style } from '../style.ts';
import { between, capOpening, crownShape, liningOpening, liningWish, profileOf } from './crown.ts';
import { threePieceForm } from './form.ts';
import { threePieceLining } from './lining.ts';
import { type ThreePieceValues, threePieceParameters } from './parameters.ts';
import { threePieceProblems } from './problems.ts';

/** A top from front to back and two sides, over a stiffened visor that the top's front is tacked to; a full lining, a sweatband. */
export const threePiece: Style<ThreePieceValues> = {
  id: 'three-piece',
  name: 'Three-piece flat cap',
  alsoCalled: ['ivy', 'driver’s cap', 'golf cap', 'bunnet'],
  tells:
    'One long top from brow to back between two sides, low and without a band, its front lying on the visor.',
  parameters: threePieceParameters,
  starts: [
    { name: 'Close and low', values: { crownHeight: 82, topWidth: 185, overhang: 16, backFullness: 10 } },
    { name: 'Sunday', values: { crownHeight: 88, topWidth: 205, overhang: 24, backFullness: 18 } },
    { name: 'Broad and soft', values: { crownHeight: 102, topWidth: 240, overhang: 36, backFullness: 28 } },
  ],
  problems: threePieceProblems,
  draft: (values, head) => draftThreePiece(values, head),
  // The sweatband lies inside the lining.
  inside: ({ lining }) => (lining ? ['lining', 'lining'] : ['lining']),
  form: threePieceForm,
  lining: threePieceLining,
};

const draftThreePiece = (values: ThreePieceValues, head: Head): CapDraft => {
  const girths = openingOf(head, values.ease);
  const opening = capOpening(values, head);
  const visor = visorParts(values, { ...head, girth: girths.shell });

  // The shell, with the visor's place on its edge; and the lining.
  const shape = crownShape(values, opening);
  const shell = topAndSides({
    layer: 'shell',
    cloth: 'outer',
    shape,
    opening,
    topName: 'Top',
    visorStretch: visor.stretch,
    topMarks: visor.stretch > 0 ? tacking(values, opening, shape) : [],
    topFigures: [
      ...girthFigures(head, values.ease),
      edgeFigure(opening),
      ...lengthFigures(values, opening, shape),
    ],
    topNotes: [
      words`Clip its allowance where the seams go round the overhang.`,
      ...(visor.stretch > 0 ? [words`Tack the fold down to the visor last.`] : []),
    ],
    sideFigures: sideFigures(shape),
  });
  const lining = values.lining
    ? liningCrown(values, head, (visor.stretch * girths.lining) / girths.shell)
    : null;

  // All of them meet at the lower edge.
  const edge = turnedIn({
    shell,
    lining,
    visor,
    kind: 'sweatband',
    opening: girths,
    height: values.sweatbandHeight,
  });
  const pattern: Pattern = {
    pieces: [...shell.pieces, ...edge.visor, ...(lining?.pieces ?? []), edge.sweatband],
    seams: [...edge.first, ...shell.seams, ...(lining?.seams ?? []), ...edge.seams],
    allowances: allowancesOf(values),
  };
  return {
    finishedGirth: girths.finished,
    facts: facts(values, opening, shape),
    insert: visor.insert,
    pattern,
  };
};

const liningCrown = (values: ThreePieceValues, head: Head, visorStretch: number) => {
  const { crownHeight, topWidth, liningTake: take } = values;
  const opening = liningOpening(values, head);
  const girths = openingOf(head, values.ease);
  const wish = liningWish(values, girths);
  const less = (name: string, shell: number, lining: number, layers: string): Figure => ({
    name: `${name} of the lining`,
    ...(girths.shell === girths.lining
      ? {
          formula: `${name.toLowerCase()} − lining smaller by`,
          worked: words`${exactMm(shell)} − ${exactMm(take)} = ${exactMm(lining)}`,
        }
      : {
          formula: `${name.toLowerCase()} − ${layers}cloth between the middles of shell and lining − lining smaller by`,
          worked: words`${exactMm(shell)} − ${layers}${thickness(between(girths))} − ${exactMm(take)} = ${exactMm(lining)}`,
        }),
  });
  return topAndSides({
    layer: 'lining',
    cloth: 'lining',
    shape: crownShape(wish, opening),
    opening,
    topName: 'Top',
    visorStretch,
    topFigures: [
      less('Crown height', crownHeight, wish.crownHeight, ''),
      less('Top width', topWidth, wish.topWidth, '2 × '),
    ],
  });
};

/** How much of the fold is tacked, and how far clear of the centre line on either hand it begins, mm. */
const TACKED = 0.75;
const TACK_GAP = 6;

/** Along the fold of the overhang, where it lies on the visor. */
const tacking = (
  values: ThreePieceValues,
  opening: OpeningCurve,
  { length, seam }: TopAndSidesShape,
): readonly PieceMark[] => {
  const [start, underLip] = profileOf(values, opening);
  const fold = length / 2 - pathLength([start!.curve, underLip!.curve]);
  const stretch = (from: number, to: number): PieceMark => ({
    kind: 'stretch',
    path: [line(point(from, fold), point(to, fold))],
    name: 'tack down',
  });
  const foremost = seam.reduce((p, q) => (q.y > p.y ? q : p));
  const far = foremost.x * TACKED;
  return [stretch(far, TACK_GAP), stretch(-TACK_GAP, -far)];
};

/** Down the middle of the top, from edge to edge, mm. */
const centreLength = (opening: OpeningCurve, { length }: TopAndSidesShape): number =>
  length - frontBow(opening);

const lengthFigures = (
  values: ThreePieceValues,
  opening: OpeningCurve,
  shape: TopAndSidesShape,
): readonly Figure[] => {
  const [, underLip, front, back, underBack] = profileOf(values, opening).map(({ curve }) =>
    pathLength([curve]),
  );
  const length = centreLength(opening, shape);
  return [
    {
      name: 'Length of the top',
      formula:
        'under the overhang + up to the highest place + down to the fullest place behind + in to the edge',
      worked: words`${exactMm(underLip!)} + ${exactMm(front!)} + ${exactMm(back!)} + ${exactMm(underBack!)} = ${exactMm(length)}`,
    },
    {
      name: 'Widest place, from the front edge',
      formula: 'length of the top × its widest place',
      worked: words`${exactMm(length)} × ${ratio(values.topWidest)} = ${exactMm(values.topWidest * length)}`,
    },
  ];
};

const edgeFigure = ({ frontLength, backLength, sideLength }: OpeningCurve): Figure => ({
  name: 'Lower edge, all the way round',
  formula: 'front of the top + 2 × lower edge of a side + back of the top',
  worked: words`${exactMm(frontLength)} + 2 × ${exactMm(sideLength)} + ${exactMm(backLength)} = ${exactMm(frontLength + 2 * sideLength + backLength)}`,
});

const sideFigures = (shape: TopAndSidesShape): readonly Figure[] => [
  {
    name: 'Long seam',
    formula: 'the edge of the side = the edge of the top',
    worked: words`${exactMm(pathLength(shape.side.seam))} = ${exactMm(pathLength(shape.top.right))}`,
  },
];

const facts = (values: ThreePieceValues, opening: OpeningCurve, shape: TopAndSidesShape): readonly Fact[] => [
  {
    id: 'top',
    name: 'Top',
    figure: words`${mm(centreLength(opening, shape))} × ${mm(values.topWidth)}`,
    title: 'The top',
    reckoning: lengthFigures(values, opening, shape),
  },
  {
    id: 'side',
    name: 'Sides',
    figure: words`${mm(sideDepth(shape).depth)} deep`,
    title: 'The sides',
    reckoning: sideFigures(shape),
  },
];
