import { pathLength } from '../../geometry/measure.ts';
import { line } from '../../geometry/path.ts';
import { point } from '../../geometry/point.ts';
import { stretchOf, walker } from '../../pattern/chain.ts';
import type { Pattern } from '../../pattern/pattern.ts';
import type { Figure, PieceMark } from '../../pattern/piece.ts';
import { exactMm, mm, ratio, words } from '../../words.ts';
import { allowancesOf } from '../parts/seams/allowances.ts';
import { ring } from '../parts/seams/seam.ts';
import { sweatband, sweatbandBackSeam, sweatbandEdge } from '../parts/sweatband/sweatband.ts';
import { frontBow, type OpeningCurve } from '../parts/top-and-sides/opening-curve.ts';
import { sideDepth } from '../parts/top-and-sides/side-depth.ts';
import { topAndSides } from '../parts/top-and-sides/top-and-sides.ts';
import type { TopAndSidesShape } from '../parts/top-and-sides/top-and-sides-shape.ts';
import { visorMeeting, visorParts } from '../parts/visor/visor-parts.ts';
import { visorEdgeSeam, visorSeam } from '../parts/visor/visor-seams.ts';
import type { CapDraft, Fact, Head, Style } from '../style.ts';
import { capOpening, crownShape, liningWish, profileOf } from './crown.ts';
import { threePieceForm } from './form.ts';
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
  form: threePieceForm,
};

const draftThreePiece = (values: ThreePieceValues, head: Head): CapDraft => {
  const finishedGirth = head.girth + values.ease;
  const opening = capOpening(values, head);
  const peak = visorParts(values, { ...head, girth: finishedGirth });

  // The shell, with the visor's place on its edge.
  const shape = crownShape(values, opening);
  const shell = topAndSides({
    layer: 'shell',
    cloth: 'outer',
    shape,
    opening,
    topName: 'Top',
    visorStretch: peak.stretch,
    topMarks: peak.stretch > 0 ? tacking(values, opening, shape) : [],
    topFigures: topFigures(values, opening, shape),
    topNotes: [
      words`Clip the allowance of the top where its seam goes round the overhang.`,
      ...(peak.stretch > 0 ? [words`When all is sewn, tack the fold of the front down to the visor.`] : []),
    ],
    sideFigures: sideFigures(shape),
  });

  // Inside: the lining, and a sweatband along the edge.
  const lining = values.lining ? liningCrown(values, opening, peak.stretch) : null;
  const walk = walker(shell.pieces);
  const band = sweatband(walk(shell.lower), values.sweatbandHeight);
  const front = stretchOf(
    shell.pieces,
    shell.lower,
    (finishedGirth - peak.stretch) / 2,
    (finishedGirth + peak.stretch) / 2,
  );
  const visor = peak.stretch > 0 ? visorMeeting(peak, walk(front)) : peak;

  const pattern: Pattern = {
    pieces: [...shell.pieces, ...visor.pieces, ...(lining?.pieces ?? []), band],
    seams: [
      ...shell.seams,
      ...(lining?.seams ?? []),
      ...(peak.stretch > 0 ? [visorEdgeSeam(), visorSeam('front of the cap', front)] : []),
      ...(lining
        ? [ring('liningEdge', 'Cap to lining, lower edge', 'lower', shell.lower, lining.lower)]
        : []),
      sweatbandBackSeam(),
      ring('lowerEdge', 'Cap to sweatband, lower edge', 'lower', shell.lower, [sweatbandEdge]),
    ],
    allowances: allowancesOf(values),
  };
  return { finishedGirth, facts: facts(values, opening, shape), insert: peak.insert, pattern };
};

const liningCrown = (values: ThreePieceValues, opening: OpeningCurve, visorStretch: number) => {
  const { crownHeight, topWidth, liningTake: take } = values;
  const less = (name: string, shell: number): Figure => ({
    name: `${name} of the lining`,
    formula: `${name.toLowerCase()} − lining smaller by`,
    worked: words`${exactMm(shell)} − ${exactMm(take)} = ${exactMm(shell - take)}`,
  });
  return topAndSides({
    layer: 'lining',
    cloth: 'lining',
    shape: crownShape(liningWish(values), opening),
    opening,
    topName: 'Top',
    visorStretch,
    topFigures: [less('Crown height', crownHeight), less('Top width', topWidth)],
  });
};

/** Clear of the centre line on either hand, mm. */
const TACK_GAP = 6;

/** Along the fold of the overhang, where it lies on the visor. */
const tacking = (
  values: ThreePieceValues,
  opening: OpeningCurve,
  { length }: TopAndSidesShape,
): readonly PieceMark[] => {
  const [start, underLip] = profileOf(values, opening);
  const fold = length / 2 - pathLength([start!.curve, underLip!.curve]);
  const stretch = (from: number, to: number): PieceMark => ({
    kind: 'stretch',
    path: [line(point(from, fold), point(to, fold))],
    name: 'tack to the visor',
  });
  const far = opening.front.x * 0.9;
  return [stretch(far, TACK_GAP), stretch(-TACK_GAP, -far)];
};

/** Down the middle of the top, from edge to edge, mm. */
const centreLength = (opening: OpeningCurve, { length }: TopAndSidesShape): number =>
  length - frontBow(opening);

const topFigures = (
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
    edgeFigure(opening),
  ];
};

const edgeFigure = ({ frontLength, backLength, sideLength }: OpeningCurve): Figure => ({
  name: 'Finished girth',
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
    reckoning: topFigures(values, opening, shape).slice(0, 2),
  },
  {
    id: 'side',
    name: 'Sides',
    figure: words`${mm(sideDepth(shape).depth)} deep`,
    title: 'The sides',
    reckoning: sideFigures(shape),
  },
];
