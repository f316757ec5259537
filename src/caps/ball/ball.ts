import { stretchOf, walker } from '../../pattern/chain.ts';
import type { Figure } from '../../pattern/piece.ts';
import { exactMm, mm, words } from '../../words.ts';
import { backStrap, reachOfFastening, roomOf } from '../parts/back-strap/back-strap.ts';
import { topButtonPieces } from '../parts/button/top-button.ts';
import { girthFigures, girthName } from '../parts/girth-figures.ts';
import { goreLengthFigure } from '../parts/gore/gore-length.ts';
import { allowancesOf } from '../parts/seams/allowances.ts';
import { visorMeeting, visorParts } from '../parts/visor/visor-parts.ts';
import { visorEdgeSeam, visorSeam } from '../parts/visor/visor-seams.ts';
import type { CapDraft, Fact, Head, Style } from '../style.ts';
import { ballCrown } from './crown.ts';
import { ballCrownShape } from './crown-shape.ts';
import { ballForm } from './form.ts';
import { ballLowerEdge } from './lower-edge.ts';
import { type BallMeasures, ballMeasures } from './measures.ts';
import { type BallValues, ballParameters } from './parameters.ts';
import { ballProblems } from './problems.ts';
import { GORES } from './profile.ts';

/** Six gores with a stiff front pair, an arch at the back with a strap or an elastic, a visor, a sweatband, a covered button. */
export const ball: Style<BallValues> = {
  id: 'ball',
  name: 'Ball cap',
  alsoCalled: ['baseball cap', 'six-panel cap'],
  tells: 'Six close gores with a stiff front pair, and an arch at the back that lets the cap out.',
  parameters: ballParameters,
  starts: [
    {
      name: 'Tall stiff front',
      values: { frontSteepness: 0.28, crownRoom: -2, goreWidest: 0.26, visorDrop: 0.35 },
    },
    {
      name: 'Low and soft',
      values: { frontSteepness: 0.04, crownRoom: -20, goreWidest: 0.14, visorDepth: 62, visorDrop: 0.5 },
    },
    {
      name: 'With an elastic',
      values: { backFastening: 'elastic', openingWidth: 80, openingHeight: 44, backStrapWidth: 24 },
    },
  ],
  problems: ballProblems,
  // The front pair's interlining goes only a third of the way round: too little to count.
  inside: () => ['lining'],
  draft: (values, head) => draftBall(values, head),
  form: ballForm,
};

const draftBall = (values: BallValues, head: Head): CapDraft => {
  const measures = ballMeasures(values, head);
  const { girths, wish, opening } = measures;
  const figures = [...ballFigures(values, head, measures), goreLengthFigure(values.crownRoom, head, 0)];

  // The visor first: the stretch of the front it takes is marked on the gores.
  const visor = visorParts(values, { ...head, girth: girths.shell });

  // The gores, with the arch cut out of the back pair.
  const shape = ballCrownShape(wish, opening);
  const crown = ballCrown(shape, {
    eyelets: values.eyelets,
    visorStretch: visor.stretch,
    upright: wish.length * wish.widest,
    figures,
  });

  // What is sewn to the lower edge, and what closes it at the back.
  const walk = walker(crown.pieces);
  const middle = walk(crown.lower).length / 2;
  const half = visor.stretch / 2;
  const front = stretchOf(crown.pieces, crown.lower, middle - half, middle + half);
  const strap = backStrap(values, values.openingWidth, girths.inner / girths.shell);
  const edge = ballLowerEdge(walk(crown.lower), crown.lower, strap, values.sweatbandHeight, girths);

  return {
    finishedGirth: girths.finished,
    facts: ballFacts(values, measures, figures),
    insert: visor.insert,
    pattern: {
      pieces: [
        ...crown.pieces,
        ...topButtonPieces(values),
        ...visorMeeting(visor, walk(front)).pieces,
        ...strap.pieces,
        edge.sweatband,
      ],
      seams: [visorEdgeSeam(visor), ...strap.seams, ...crown.seams, visorSeam('crown', front), edge.seam],
      allowances: allowancesOf(values),
    },
  };
};

const ballFigures = (values: BallValues, head: Head, { girths, wish }: BallMeasures): readonly Figure[] => {
  const room = roomOf(values);
  const called = girthName(girths, girths.shell);
  return [
    ...girthFigures(head, values.ease),
    {
      name: 'Lower edge of a whole gore',
      formula: room > 0 ? `(${called} + room to let out) ÷ number of gores` : `${called} ÷ number of gores`,
      worked:
        room > 0
          ? words`(${exactMm(girths.shell)} + ${exactMm(room)}) ÷ ${String(GORES)} = ${exactMm(wish.girth / GORES)}`
          : words`${exactMm(girths.shell)} ÷ ${String(GORES)} = ${exactMm(wish.girth / GORES)}`,
    },
  ];
};

const ballFacts = (
  values: BallValues,
  { girths, wish }: BallMeasures,
  figures: readonly Figure[],
): readonly Fact[] => {
  const other = reachOfFastening(values, girths.finished, values.openingWidth);
  return [
    {
      id: 'gore',
      name: 'Gore',
      figure: words`${mm(wish.girth / GORES)} × ${mm(wish.length)}`,
      title: 'One gore, lower edge and up the middle',
      reckoning: figures,
    },
    {
      id: 'back',
      name: values.backFastening === 'strap' ? 'Lets out to' : 'At rest',
      figure: words`${mm(other.girth)}`,
      title: other.figure.name,
      reckoning: [other.figure],
    },
  ];
};
