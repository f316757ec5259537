import { pathLength, pointAt, tangentAt } from '../../../geometry/measure.ts';
import { line, type Path } from '../../../geometry/path.ts';
import { add, left, type Point, point, scale } from '../../../geometry/point.ts';
import type { Figure, PieceMark } from '../../../pattern/piece.ts';
import { count, exactMm, type Words, words } from '../../../words.ts';

/** Pleats along one quarter of a crown's lower edge. mm. */
export interface QuarterPleats {
  /** How many lie in the quarter. */
  readonly count: number;
  /** The cloth that each takes up: the distance between its two lines. */
  readonly take: number;
}

/** The pleats that take up the whole surplus of an edge that is longer than what it is sewn to by a ratio. mm. */
export const pleatsFor = (lowerGirth: number, gather: number, count: number): QuarterPleats => ({
  count,
  take: (lowerGirth - lowerGirth / (1 + gather)) / 4 / count,
});

/** Where each pleat begins and ends, mm along its quarter: evenly spread, so that the sewn pleats are too. */
export const pleatPlaces = (
  length: number,
  { count, take }: QuarterPleats,
): readonly (readonly [number, number])[] =>
  Array.from({ length: count }, (_, k) => {
    const middle = ((k + 0.5) * length) / count;
    return [middle - take / 2, middle + take / 2] as const;
  });

/** How far a pleat's lines run into the piece, mm, and the share of its height that they never pass. */
const LINES = 22;
const MOST_OF_HEIGHT = 0.4;

/** How far the pleats' lines run into a piece that is somewhere no taller than this, mm. */
export const pleatLines = (leastHeight: number): number => Math.min(LINES, MOST_OF_HEIGHT * leastHeight);

/**
 * Marks for pleats along a bottom edge (left to right), on the quarter that begins `from` mm along it, their folds
 * pointing to the quarter's start or end. Lines in mm.
 */
export const pleatMarks = (
  bottom: Path,
  from: number,
  pleats: QuarterPleats,
  towards: 'start' | 'end',
  lines: number,
): readonly PieceMark[] => {
  const length = pathLength(bottom) - from;
  const lineAt = (mm: number) => {
    const foot = pointAt(bottom, from + mm);
    return line(foot, add(foot, scale(left(tangentAt(bottom, from + mm)), lines)));
  };
  return pleatPlaces(length, pleats).map(([a, b]): PieceMark => {
    const [fold, place] = towards === 'end' ? [a, b] : [b, a];
    return { kind: 'pleat', fold: lineAt(fold), place: lineAt(place), name: 'pleat' };
  });
};

/** The same marks and their mirror images in x = 0. */
export const onBothSides = (marks: readonly PieceMark[]): readonly PieceMark[] => [
  ...marks.flatMap((mark) => (mark.kind === 'pleat' ? [mirroredPleat(mark)] : [])).reverse(),
  ...marks,
];

type PleatMark = Extract<PieceMark, { kind: 'pleat' }>;

const mirroredPleat = (mark: PleatMark): PleatMark => {
  const flip = (p: Point) => point(0 - p.x, p.y);
  return {
    ...mark,
    fold: line(flip(mark.fold.from), flip(mark.fold.to)),
    place: line(flip(mark.place.from), flip(mark.place.to)),
  };
};

export const pleatNote: Words = words`Pleats: fold on the dash-dot line and lay the fold on the plain line; the arrows, and the folds, point to the back.`;

/** How the pleats take up the surplus exactly. */
export const pleatFigure = (
  lowerGirth: number,
  gather: number,
  pleats: QuarterPleats,
  girthName: string,
): Figure => {
  const surplus = lowerGirth - lowerGirth / (1 + gather);
  return {
    name: 'Cloth in each pleat',
    formula: `(lower edge of the crown − ${girthName}) ÷ number of pleats`,
    worked: words`${exactMm(surplus)} ÷ ${count(4 * pleats.count)} = ${exactMm(pleats.take)}`,
  };
};
