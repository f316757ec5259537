import { isRound, type Oval, ovalGirth, ovalPath } from '../../geometry/oval.ts';
import { line } from '../../geometry/path.ts';
import { point } from '../../geometry/point.ts';
import type { Cut, Figure, Notch, Piece } from '../../pattern/piece.ts';
import { exactMm, ratio, words } from '../../words.ts';

interface TipWish {
  readonly id: string;
  readonly name: string;
  readonly cuts: readonly Cut[];
  readonly rim: Oval;
  /** A notch between the quarters too, where the side band comes in quarters. */
  readonly eighths: boolean;
  readonly figures?: readonly Figure[];
}

/** The flat top: the area inside the crown's rim, front upwards. Its edge runs counter-clockwise from the centre back. */
export const tip = ({ id, name, cuts, rim, eighths, figures = [] }: TipWish): Piece => {
  const { halfLength: a, halfBreadth: b } = rim;
  return {
    id,
    name,
    cuts,
    outline: [{ name: 'rim', path: ovalPath(rim, -Math.PI / 2), kind: 'crown' }],
    foldable: true,
    grain: [point(b * 0.62, -a * 0.4), point(b * 0.62, a * 0.4)],
    notches: rimNotches('rim', ovalGirth(rim), eighths),
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
    notes: [],
  };
};

/** Centre back, side, centre front and side round a closed edge that starts at the centre back, and the eighths if wanted. */
export const rimNotches = (edge: string, girth: number, eighths: boolean): readonly Notch[] => {
  const quarters: readonly Notch[] = [
    { edge, at: 0, count: 2, name: 'centre back' },
    { edge, at: girth / 4, count: 1, name: 'side' },
    { edge, at: girth / 2, count: 1, name: 'centre front' },
    { edge, at: (girth * 3) / 4, count: 1, name: 'side' },
  ];
  const between = [1, 3, 5, 7].map(
    (n): Notch => ({ edge, at: (girth * n) / 8, count: 1, name: 'middle of a quarter' }),
  );
  return eighths ? [...quarters, ...between] : quarters;
};

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
