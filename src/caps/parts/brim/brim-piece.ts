import { pathLength, pointAt } from '../../../geometry/measure.ts';
import { line } from '../../../geometry/path.ts';
import { between, type Point, point } from '../../../geometry/point.ts';
import type { SlopeShape } from '../../../geometry/slope-shape.ts';
import type { Cut, Notch, Piece, PieceMark } from '../../../pattern/piece.ts';
import { mm, count as number, type Words, words } from '../../../words.ts';
import { stiffenerInside } from '../stiffener-inside.ts';
import { brimFigures } from './brim-figures.ts';
import type { BrimSlope } from './brim-slope.ts';
import type { BrimMake } from './parameters.ts';
import type { Section } from './sections.ts';
import { FIRST_ROW, stitchRows } from './stitch-rows.ts';

interface BrimPieceWish {
  readonly id: string;
  readonly section: Section;
  readonly shape: SlopeShape;
  readonly slope: BrimSlope;
  readonly make: BrimMake;
  readonly symmetric: boolean;
  /** Copies for one layer, and pieces in the whole ring. */
  readonly count: number;
  readonly sections: number;
  readonly notches: readonly Notch[];
}

/** One piece of the brim, outer edge downwards: the same for upper and under brim. */
export const brimPiece = (wish: BrimPieceWish): Piece => {
  const { id, section, shape, slope, symmetric } = wish;
  const middle = placeOn(shape, 0.5, 0.5);
  const upright = line(placeOn(shape, 0.5, 0), placeOn(shape, 0.5, 1));
  const foot = placeOn(
    shape,
    0.5 + Math.min(0.28, (symmetric ? GRAIN_ASIDE : GRAIN_BESIDE_LABEL) / pathLength(shape.bottom)),
    0.5,
  );
  const reach = slope.width * 0.3;
  return {
    id,
    name: section.end === '' ? 'Brim' : `Brim, ${section.end.toLowerCase()}`,
    cuts: cutsOf(wish),
    outline: [
      { name: 'outer', path: shape.bottom, kind: 'brimEdge' },
      { name: 'right', path: shape.right, kind: 'side' },
      { name: 'inner', path: shape.top, kind: 'lower' },
      { name: 'left', path: shape.left, kind: 'side' },
    ],
    foldable: symmetric,
    grain: [point(foot.x, foot.y - reach), point(foot.x, foot.y + reach)],
    notches: wish.notches,
    centreLines: symmetric ? [[upright]] : [],
    marks: endMarks(wish),
    labelAt: middle,
    dimensions: [
      { name: 'Width', along: shape.right },
      { name: 'Outer edge', along: shape.bottom },
      { name: 'Inner edge', along: shape.top },
    ],
    figures: brimFigures(slope, wish.sections),
    notes: notesOf(wish),
  };
};

/** How far beside the middle the grainline stands, along the outer edge, mm: past a label that lies across the middle, or beside the centre line. */
const GRAIN_BESIDE_LABEL = 84;
const GRAIN_ASIDE = 52;

/** A point of the piece: parts of the way from its left end to its right, and from its outer edge to its inner. */
const placeOn = (shape: SlopeShape, across: number, up: number): Point => {
  const low = pointAt(shape.bottom, pathLength(shape.bottom) * across);
  const high = pointAt(shape.top, pathLength(shape.top) * (1 - across));
  return between(low, high, up);
};

const cutsOf = ({ make, symmetric, count }: BrimPieceWish): readonly Cut[] => {
  const cut = (cloth: Cut['cloth'], layers: number): Cut => ({
    cloth,
    count: layers * count,
    ...(symmetric ? {} : { mirrored: (layers * count) / 2 }),
  });
  const faces = make.brimUnder === 'lining' ? [cut('outer', 1), cut('lining', 1)] : [cut('outer', 2)];
  switch (make.brimBody) {
    case 'none':
      return faces;
    case 'one':
      return [...faces, cut('interlining', 1)];
    case 'two':
      return [...faces, cut('interlining', 2)];
    case 'stiffener':
      return [...faces, cut('stiffener', 1)];
  }
};

/** Words that tell one end from the other, where they differ. */
const endMarks = ({ section, shape, symmetric, count }: BrimPieceWish): readonly PieceMark[] => {
  if (symmetric) return [];
  const names: readonly [string, string] =
    count === 4
      ? ['centre', 'side']
      : section.from === 0
        ? ['centre back', section.to < 1 / 2 ? (section.to === 1 / 4 ? 'side' : 'front') : 'centre front']
        : ['side', 'centre front'];
  const inset = END_WORD / pathLength(shape.top);
  return [
    { kind: 'text', text: names[0], at: placeOn(shape, inset, 0.12) },
    { kind: 'text', text: names[1], at: placeOn(shape, 1 - inset, 0.12) },
  ];
};

/** From an end to the middle of its word, along the inner edge, mm. */
const END_WORD = 14;

const notesOf = ({ make, slope, section, symmetric, count }: BrimPieceWish): readonly Words[] => [
  ...(make.brimBody === 'one' || make.brimBody === 'two'
    ? [words`Interlining is cut on the stitch line, without allowance.`]
    : []),
  ...(make.brimBody === 'stiffener' ? [words`${stiffenerInside}, its ends laid edge to edge.`] : []),
  ...(symmetric && section.paired && count === 2
    ? [words`Either end goes to the centre front, the other to the centre back.`]
    : []),
  ...(make.brimStitched ? [rowsNote(slope.width, make.brimRowSpacing)] : []),
];

const rowsNote = (width: number, spacing: number): Words => {
  const rows = stitchRows(width, spacing);
  return rows === 1
    ? words`Topstitch 1 row, ${mm(FIRST_ROW)} from the outer edge.`
    : words`Topstitch ${number(rows)} rows, ${mm(spacing)} apart, the first ${mm(FIRST_ROW)} from the outer edge.`;
};
