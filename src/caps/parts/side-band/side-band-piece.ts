import { pathLength, pointAt, stretch } from '../../../geometry/measure.ts';
import { line, type Path } from '../../../geometry/path.ts';
import { distance, type Point, point } from '../../../geometry/point.ts';
import type { Cut, Notch, Piece, SeamKind } from '../../../pattern/piece.ts';
import { ratio, words } from '../../../words.ts';
import { pleatFigure, pleatLines, pleatNote, pleatsFor, type QuarterPleats } from './pleats.ts';
import { sideBandFigures } from './side-band-figures.ts';
import type { SideBandShape } from './side-band-shape.ts';
import type { SideBandWish } from './side-band-wish.ts';
import type { End, SideSlope } from './side-slope.ts';

export const middleNotches = (shape: SideBandShape, name: string, count: 1 | 2): readonly Notch[] => [
  { edge: 'bottom', at: pathLength(shape.bottom) / 2, count, name },
  { edge: 'top', at: pathLength(shape.top) / 2, count, name },
];

/** The feet and heads of a line up the piece, a fraction of the way from its left end to its right. */
const uprightAt = (shape: SideBandShape, fraction: number) => ({
  low: pointAt(shape.bottom, pathLength(shape.bottom) * fraction),
  high: pointAt(shape.top, pathLength(shape.top) * (1 - fraction)),
});

/** A point half-way up the piece, a fraction of the way from its left end to its right. */
export const halfWayUp = (shape: SideBandShape, fraction: number): Point => {
  const { low, high } = uprightAt(shape, fraction);
  return point((low.x + high.x) / 2, (low.y + high.y) / 2);
};

/** The least height of a piece, mm: at an end or in the middle. */
export const leastHeight = (shape: SideBandShape): number =>
  Math.min(
    ...[0, 0.5, 1].map((fraction) => {
      const { low, high } = uprightAt(shape, fraction);
      return distance(low, high);
    }),
  );

/** Between a grainline and the pleats below it, and the shortest grainline that is worth moving for it, mm. */
const [CLEAR, SHORT] = [5, 12];

/** What every side band piece has: its edges, grain, centre line and measures. Pleats run `lines` mm into it. */
export const shapedPiece = (shape: SideBandShape, slope: SideSlope, lower: SeamKind = 'band', lines = 0) => {
  const middle = halfWayUp(shape, 0.5);
  const grainFoot = halfWayUp(shape, 0.16);
  const { low, high } = uprightAt(shape, 0.16);
  const reach = (slope.tilt === 0 ? slope.height : distance(low, high)) * 0.33;
  const [whole, to] = [grainFoot.y - reach, grainFoot.y + reach];
  const free = lines === 0 ? whole : Math.max(whole, low.y + lines + CLEAR);
  const from = to - free < SHORT ? whole : free;
  const upright = line(
    pointAt(shape.bottom, pathLength(shape.bottom) / 2),
    pointAt(shape.top, pathLength(shape.top) / 2),
  );
  return {
    outline: [
      { name: 'bottom', path: shape.bottom, kind: lower },
      { name: 'right', path: shape.right, kind: 'side' },
      { name: 'top', path: shape.top, kind: 'crown' },
      { name: 'left', path: shape.left, kind: 'side' },
    ],
    grain: [point(grainFoot.x, from), point(grainFoot.x, to)],
    centreLines: [[upright]],
    labelAt: point(middle.x + pathLength(shape.bottom) * 0.12, middle.y),
    dimensions: [
      { name: 'Height', along: shape.right },
      { name: 'Top edge', along: shape.top },
      { name: 'Bottom edge', along: shape.bottom },
    ],
  } as const satisfies Partial<Piece>;
};

/** Its own cloth, and what else is cut to the same outline. */
export const cutsOf = ({ cloth, inside }: SideBandWish, cut: Omit<Cut, 'cloth'>): readonly Cut[] =>
  (inside ? [cloth, inside] : [cloth]).map((one) => ({ cloth: one, ...cut }));

/** How far pleats run into a piece, mm. */
export const linesOf = ({ pleats }: SideBandWish, shape: SideBandShape): number =>
  pleats === 0 ? 0 : pleatLines(leastHeight(shape));

/** On either side of the middle, whose notch and centre line stay clear. */
const gathers = (bottom: Path): Piece['marks'] => {
  const length = pathLength(bottom);
  return [0, length / 2].map((from) => ({
    kind: 'stretch',
    path: stretch(bottom, from, from + length / 2),
    name: 'gather',
  }));
};

/** What a piece says and shows of its lower edge being drawn in, by gathers or by the pleats that are given. */
export const drawnIn = (
  { slope, gather, pleats, girthName = 'finished girth' }: SideBandWish,
  pieces: number,
  end: End,
  shape: SideBandShape,
  pleatMarks: (pleats: QuarterPleats) => Piece['marks'],
): Pick<Piece, 'figures' | 'notes' | 'marks'> => {
  const figures = sideBandFigures(slope, pieces, gather, end, girthName);
  if (gather === 0) return { figures, notes: [], marks: [] };
  if (pleats === 0) {
    return {
      figures,
      notes: [words`Gather the lower edge to the band, quarter by quarter: it is ${ratio(gather)} longer.`],
      marks: gathers(shape.bottom),
    };
  }
  const each = pleatsFor(slope.openingGirth, gather, pleats);
  return {
    figures: [...figures, pleatFigure(slope.openingGirth, gather, each, girthName)],
    notes: [pleatNote],
    marks: pleatMarks(each),
  };
};
