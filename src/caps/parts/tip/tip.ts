import { isRound, type Oval, ovalGirth, ovalPath } from '../../../geometry/oval.ts';
import { line } from '../../../geometry/path.ts';
import { point } from '../../../geometry/point.ts';
import type { Cut, Figure, Notch, Piece, SeamKind } from '../../../pattern/piece.ts';
import { exactMm, ratio, type Words, words } from '../../../words.ts';
import { eighthNotches, quarterNotches } from '../girth-notches.ts';

interface TipWish {
  readonly id: string;
  readonly name: string;
  readonly cuts: readonly Cut[];
  readonly rim: Oval;
  /** A notch between the quarters too, where the side band comes in quarters. */
  readonly eighths: boolean;
  /** What its edge is sewn as; `crown` where left out. */
  readonly sewn?: SeamKind;
  readonly figures?: readonly Figure[];
  readonly notes?: readonly Words[];
}

/** The flat top: the area inside the crown's rim, front upwards. Its edge runs counter-clockwise from the centre back. */
export const tip = ({
  id,
  name,
  cuts,
  rim,
  eighths,
  sewn = 'crown',
  figures = [],
  notes = [],
}: TipWish): Piece => {
  const { halfLength: a, halfBreadth: b } = rim;
  return {
    id,
    name,
    cuts,
    outline: [{ name: 'rim', path: ovalPath(rim, -Math.PI / 2), kind: sewn }],
    foldable: true,
    grain: [point(b * 0.62, -a * 0.4), point(b * 0.62, a * 0.4)],
    notches: rimNotches(ovalGirth(rim), eighths),
    centreLines: [[line(point(0, -a), point(0, a))], [line(point(-b, 0), point(b, 0))]],
    marks: [],
    labelAt: point(0, a * 0.1),
    dimensions: isRound(rim)
      ? [{ name: 'Diameter', along: [line(point(-b, 0), point(b, 0))] }]
      : [
          { name: 'Breadth', along: [line(point(-b, 0), point(b, 0))] },
          { name: 'Length', along: [line(point(0, -a), point(0, a))] },
        ],
    figures: [...figures, ...shapeFigures(rim)],
    notes,
  };
};

/** Centre back, side, centre front and side round the rim, and the eighths if wanted. */
const rimNotches = (girth: number, eighths: boolean): readonly Notch[] => [
  { edge: 'rim', at: 0, count: 2, name: 'centre back' },
  ...quarterNotches('rim', girth),
  ...(eighths ? eighthNotches('rim', girth) : []),
];

const shapeFigures = (rim: Oval): readonly Figure[] => {
  const girth = ovalGirth(rim);
  if (isRound(rim)) {
    return [
      {
        name: 'Tip radius',
        formula: 'crown girth ÷ 2π',
        worked: words`${exactMm(girth)} ÷ 6.2832 = ${exactMm(rim.halfLength)}`,
      },
    ];
  }
  const perimeterOfOne = girth / rim.halfLength;
  return [
    {
      name: 'Tip length',
      formula: '2 × crown girth ÷ perimeter of an ellipse of half length 1 and this ratio',
      worked: words`2 × ${exactMm(girth)} ÷ ${perimeterOfOne.toFixed(4)} = ${exactMm(2 * rim.halfLength)}`,
    },
    {
      name: 'Tip breadth',
      formula: 'length × breadth-to-length',
      worked: words`${exactMm(2 * rim.halfLength)} × ${ratio(rim.halfBreadth / rim.halfLength)} = ${exactMm(2 * rim.halfBreadth)}`,
    },
  ];
};
