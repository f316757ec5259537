import { pathLength, pointAt } from '../../../geometry/measure.ts';
import { line, type Path, pathEnd, pathStart } from '../../../geometry/path.ts';
import { between, type Point, point } from '../../../geometry/point.ts';
import { SAME_POINT } from '../../../geometry/tolerance.ts';
import type { Notch, Piece } from '../../../pattern/piece.ts';
import type { LayerWish } from './layer-wish.ts';
import type { OpeningCurve } from './opening-curve.ts';
import { SEAM_NOTCHES } from './seam-notches.ts';
import type { TopAndSidesShape } from './top-and-sides-shape.ts';

/** The top, front upwards. */
export const topPiece = (wish: LayerWish, id: string, name: string): Piece => {
  const { top, length } = wish.shape;
  const { back, right, front, left } = top;
  const heel = pointAt(front, pathLength(front) / 2);
  const widest = widestOf(right);
  return {
    id,
    name,
    cuts: [{ cloth: wish.cloth, count: 1 }],
    outline: [
      { name: 'back', path: back, kind: 'lower' },
      { name: 'right', path: right, kind: 'gore' },
      { name: 'front', path: front, kind: 'lower' },
      { name: 'left', path: left, kind: 'gore' },
    ],
    foldable: true,
    grain: [point(widest.x * 0.55, -length * 0.06), point(widest.x * 0.55, length * 0.22)],
    notches: [...seamNotches(pathLength(right)), ...edgeNotches(wish.opening, wish.visorStretch)],
    centreLines: centreLines(widest.x, point(0, -length / 2), heel),
    marks: wish.topMarks ?? [],
    labelAt: widest.x >= NARROW ? point(-widest.x * 0.42, 0) : point(0, -length * 0.13),
    dimensions: [
      { name: 'Length', along: [line(point(0, -length / 2), heel)] },
      ...(isStrip(top)
        ? [{ name: 'Width', along: back }]
        : [
            { name: 'Widest', along: [line(point(-widest.x, widest.y), widest)] },
            { name: 'Front', along: [line(pathEnd(right), pathStart(left))] },
            { name: 'Back', along: back },
          ]),
    ],
    figures: wish.topFigures ?? [],
    notes: wish.topNotes ?? [],
  };
};

/** On half a top narrower than this (mm) there is no room for its words: the centre line leaves its middle free for them. */
const NARROW = 80;

const centreLines = (half: number, foot: Point, head: Point): readonly Path[] =>
  half >= NARROW
    ? [[line(foot, head)]]
    : [[line(foot, between(foot, head, 0.3))], [line(between(foot, head, 0.7), head)]];

const seamNotches = (length: number): readonly Notch[] =>
  SEAM_NOTCHES.flatMap(({ share, count, name }) => [
    { edge: 'right', at: length * (1 - share), count, name },
    { edge: 'left', at: length * share, count, name },
  ]);

const edgeNotches = ({ frontLength, backLength }: OpeningCurve, visorStretch: number): readonly Notch[] => [
  { edge: 'front', at: frontLength / 2, count: 1, name: 'centre front' },
  { edge: 'back', at: backLength / 2, count: 2, name: 'centre back' },
  // Is the visor no wider than the top's front? Then it ends there.
  ...(visorStretch > 0 && visorStretch < frontLength
    ? [-1, 1].map(
        (side): Notch => ({
          edge: 'front',
          at: (frontLength + side * visorStretch) / 2,
          count: 1,
          name: 'visor end',
        }),
      )
    : []),
];

/** Of one width all along. */
const isStrip = ({ right }: TopAndSidesShape['top']): boolean =>
  right.every(({ from, to }) => Math.abs(from.x - to.x) <= SAME_POINT);

/** The joint of the edge that stands out furthest: near enough to measure across at. */
const widestOf = (right: Path) => right.map((curve) => curve.to).reduce((p, q) => (q.x > p.x ? q : p));
