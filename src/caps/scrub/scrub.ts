import { pathLength } from '../../geometry/measure.ts';
import { sideScaled, walker } from '../../pattern/chain.ts';
import type { Pattern } from '../../pattern/pattern.ts';
import type { Figure } from '../../pattern/piece.ts';
import { exactMm, mm, words } from '../../words.ts';
import { type Opening, openingOf } from '../opening.ts';
import { backSeam } from '../parts/band/band-seams.ts';
import { girthFigures } from '../parts/girth-figures.ts';
import { allowancesOf } from '../parts/seams/allowances.ts';
import { inside, ring } from '../parts/seams/seam.ts';
import type { OpeningCurve } from '../parts/top-and-sides/opening-curve.ts';
import { topAndSides } from '../parts/top-and-sides/top-and-sides.ts';
import type { TopAndSidesShape } from '../parts/top-and-sides/top-and-sides-shape.ts';
import type { CapDraft, Fact, Head, Style } from '../style.ts';
import { casing, casingEdge, elasticFigure, restingGirth } from './casing.ts';
import { scrubOpening, scrubProfile, scrubShape } from './crown.ts';
import { scrubForm } from './form.ts';
import { type ScrubValues, scrubParameters } from './parameters.ts';
import { scrubProblems } from './problems.ts';
import { tie, tieSeams } from './tie.ts';

/** A strip over the head from front to back between two half-oval sides, unlined; a casing with elastic or ties. */
export const scrub: Style<ScrubValues> = {
  id: 'scrub',
  name: 'Scrub cap',
  alsoCalled: ['surgical cap', 'theatre cap', 'surgeon’s cap'],
  tells: 'A plain strip of one width over a close crown, without visor or band, drawn in behind.',
  parameters: scrubParameters,
  starts: [
    { name: 'Close', values: { ease: 2, crownHeight: 108, stripWidth: 102, backTie: 'elastic' } },
    { name: 'Room for hair', values: { ease: 16, crownHeight: 136, stripWidth: 114 } },
    { name: 'To share', values: { ease: 10, crownHeight: 122, backTie: 'ties', tieLength: 300 } },
  ],
  problems: scrubProblems,
  draft: (values, head) => draftScrub(values, head),
  inside: () => ['outer'],
  form: scrubForm,
};

const draftScrub = (values: ScrubValues, head: Head): CapDraft => {
  const girths = openingOf(head, values.ease);
  const within = girths.inner / girths.shell;
  const opening = scrubOpening(values, head);
  const shape = scrubShape(values, opening);
  const crown = topAndSides({
    layer: 'shell',
    cloth: 'outer',
    shape,
    opening,
    topName: 'Centre strip',
    visorStretch: 0,
    topFigures: [
      ...girthFigures(head, values.ease),
      edgeFigure(opening),
      lengthFigure(values, opening, shape),
    ],
    sideFigures: sideFigures(shape),
  });
  const strip = casing(sideScaled(walker(crown.pieces)(crown.lower), within), values);
  const ties = values.backTie === 'ties';
  const pattern: Pattern = {
    pieces: [...crown.pieces, strip, ...(ties ? [tie(values, girths.inner)] : [])],
    seams: [
      ...crown.seams,
      ...(ties ? tieSeams() : [backSeam('casingBack', 'Casing back seam', 'casing')]),
      inside(
        ring('lowerEdge', 'Crown to casing, lower edge', 'lower', crown.lower, [casingEdge]),
        girths.shell,
        girths.inner,
      ),
    ],
    allowances: allowancesOf(values),
  };
  return {
    finishedGirth: girths.finished,
    facts: facts(values, girths, opening, shape),
    insert: null,
    pattern,
  };
};

const lengthFigure = (
  { crownHeight }: ScrubValues,
  opening: OpeningCurve,
  { length }: TopAndSidesShape,
): Figure => {
  const [brow, front, back, rump] = scrubProfile(crownHeight, opening).map(({ curve }) =>
    pathLength([curve]),
  );
  return {
    name: 'Length of the strip',
    formula: 'out over the brow + up to the highest place + down behind + in to the edge',
    worked: words`${exactMm(brow!)} + ${exactMm(front!)} + ${exactMm(back!)} + ${exactMm(rump!)} = ${exactMm(length)}`,
  };
};

const edgeFigure = ({ frontLength, sideLength }: OpeningCurve): Figure => ({
  name: 'Lower edge, all the way round',
  formula: '2 × width of the strip + 2 × lower edge of a side',
  worked: words`2 × ${exactMm(frontLength)} + 2 × ${exactMm(sideLength)} = ${exactMm(2 * (frontLength + sideLength))}`,
});

const sideFigures = (shape: TopAndSidesShape): readonly Figure[] => [
  {
    name: 'Long seam',
    formula: 'the curved edge of the side = the long edge of the strip',
    worked: words`${exactMm(pathLength(shape.side.seam))} = ${exactMm(shape.length)}`,
  },
];

const facts = (
  values: ScrubValues,
  { inner: girth }: Opening,
  opening: OpeningCurve,
  shape: TopAndSidesShape,
): readonly Fact[] => {
  const rests: Fact = {
    id: 'rests',
    name: 'Elastic at rest',
    figure: words`${mm(restingGirth(girth, values.elasticLength))} round`,
    title: 'Drawn in by the elastic',
    reckoning: [elasticFigure(girth, values)],
  };
  return [
    {
      id: 'strip',
      name: 'Strip',
      figure: words`${mm(shape.length)} × ${mm(values.stripWidth)}`,
      title: 'The centre strip',
      reckoning: [lengthFigure(values, opening, shape)],
    },
    ...(values.backTie === 'elastic' ? [rests] : []),
  ];
};
