import { pathLength, pointAt } from '../../../geometry/measure.ts';
import { isRound } from '../../../geometry/oval.ts';
import { line } from '../../../geometry/path.ts';
import { type Point, point } from '../../../geometry/point.ts';
import type { Cut, Figure, Notch, Piece } from '../../../pattern/piece.ts';
import type { EdgeUse } from '../../../pattern/seam.ts';
import { count, exactMm, radians, words } from '../../../words.ts';
import { halfShape, quarterShape, reachOf, type SideBandShape, type SideSlope } from './side-band-shape.ts';

interface SideBandWish {
  readonly id: string;
  readonly name: string;
  readonly cloth: Cut['cloth'];
  readonly slope: SideSlope;
  readonly pieces: '2' | '4';
}

/** The side band's pieces and how they go round, from the centre back to the wearer's right (counter-clockwise from above). */
export interface SideBand {
  readonly pieces: readonly Piece[];
  /** The upper and lower edges all the way round, starting and ending at the centre back. */
  readonly top: readonly EdgeUse[];
  readonly bottom: readonly EdgeUse[];
  /** The short seams between neighbours. */
  readonly joins: readonly { readonly name: string; readonly a: EdgeUse; readonly b: EdgeUse }[];
}

export const sideBand = (wish: SideBandWish): SideBand =>
  wish.pieces === '2' ? halves(wish) : quarters(wish);

const halves = ({ id, name, cloth, slope }: SideBandWish): SideBand => {
  const shape = halfShape(slope);
  const make = (end: 'Front' | 'Back'): Piece => ({
    ...shapedPiece(shape, slope, 2),
    id: `${id}${end}`,
    name: `${name}, ${end.toLowerCase()}`,
    cuts: [{ cloth, count: 1 }],
    foldable: true,
    notches: middleNotches(shape, `centre ${end.toLowerCase()}`, end === 'Back' ? 2 : 1),
  });
  const [front, back] = [make('Front'), make('Back')];
  const round = (edge: 'top' | 'bottom', length: number, backwards: boolean): readonly EdgeUse[] => [
    { piece: back.id, copy: 0, edge, backwards, from: length / 2, to: length },
    { piece: front.id, copy: 0, edge, backwards },
    { piece: back.id, copy: 0, edge, backwards, from: 0, to: length / 2 },
  ];
  const join = (left: Piece, right: Piece) => ({
    name: 'side',
    a: { piece: left.id, copy: 0, edge: 'right' },
    b: { piece: right.id, copy: 0, edge: 'left', backwards: true },
  });
  return {
    pieces: [front, back],
    top: round('top', pathLength(shape.top), true),
    bottom: round('bottom', pathLength(shape.bottom), false),
    joins: [join(back, front), join(front, back)],
  };
};

/** Names of the four joins, going round from the centre back. */
const QUARTER_JOINS = ['side', 'centre front', 'side', 'centre back'];

const quarters = ({ id, name, cloth, slope }: SideBandWish): SideBand => {
  const shape = quarterShape(slope);
  const round = isRound(slope.rim);
  const piece: Piece = {
    ...shapedPiece(shape, slope, 4),
    id,
    name,
    cuts: [{ cloth, count: 4, ...(round ? {} : { mirrored: 2 }) }],
    foldable: round,
    notches: middleNotches(shape, 'middle of the quarter', 1),
    notes: round
      ? []
      : [words`The end marked “centre” goes to the centre front or back, the other to the side.`],
    marks: round
      ? []
      : [
          { kind: 'text', text: 'centre', at: endOf(shape, 0.06) },
          { kind: 'text', text: 'side', at: endOf(shape, 0.94) },
        ],
  };
  // Every second quarter lies face down, so it is walked the other way.
  const turned = (copy: number) => !round && copy % 2 === 1;
  const use = (copy: number, edge: 'top' | 'bottom'): EdgeUse => ({
    piece: id,
    copy,
    edge,
    backwards: (edge === 'top') !== turned(copy),
  });
  const end = (copy: number, side: 'left' | 'right'): EdgeUse => {
    const edge = turned(copy) ? (side === 'left' ? 'right' : 'left') : side;
    return { piece: id, copy, edge, backwards: edge === 'left' };
  };
  const copies = [0, 1, 2, 3];
  return {
    pieces: [piece],
    top: copies.map((copy) => use(copy, 'top')),
    bottom: copies.map((copy) => use(copy, 'bottom')),
    joins: copies.map((copy) => ({
      name: QUARTER_JOINS[copy]!,
      a: end(copy, 'right'),
      b: end((copy + 1) % 4, 'left'),
    })),
  };
};

const middleNotches = (shape: SideBandShape, name: string, count: 1 | 2): readonly Notch[] => [
  { edge: 'bottom', at: pathLength(shape.bottom) / 2, count, name },
  { edge: 'top', at: pathLength(shape.top) / 2, count, name },
];

/** A point half-way up the piece, a fraction of the way from its left end to its right. */
const endOf = (shape: SideBandShape, fraction: number): Point => {
  const low = pointAt(shape.bottom, pathLength(shape.bottom) * fraction);
  const high = pointAt(shape.top, pathLength(shape.top) * (1 - fraction));
  return point((low.x + high.x) / 2, (low.y + high.y) / 2);
};

const shapedPiece = (shape: SideBandShape, slope: SideSlope, pieces: number) => {
  const middle = endOf(shape, 0.5);
  const grainFoot = endOf(shape, 0.16);
  const reach = slope.height * 0.33;
  const upright = line(
    pointAt(shape.bottom, pathLength(shape.bottom) / 2),
    pointAt(shape.top, pathLength(shape.top) / 2),
  );
  return {
    outline: [
      { name: 'bottom', path: shape.bottom, kind: 'band' },
      { name: 'right', path: shape.right, kind: 'side' },
      { name: 'top', path: shape.top, kind: 'crown' },
      { name: 'left', path: shape.left, kind: 'side' },
    ],
    grain: [point(grainFoot.x, grainFoot.y - reach), point(grainFoot.x, grainFoot.y + reach)],
    centreLines: [[upright]],
    marks: [],
    labelAt: point(middle.x + pathLength(shape.bottom) * 0.12, middle.y),
    dimensions: [
      { name: 'Height', along: shape.right },
      { name: 'Top edge', along: shape.top },
      { name: 'Bottom edge', along: shape.bottom },
    ],
    figures: figuresOf(slope, pieces),
    notes: [],
  } as const satisfies Omit<Piece, 'id' | 'name' | 'cuts' | 'foldable' | 'notches'>;
};

const figuresOf = (slope: SideSlope, pieces: number): readonly Figure[] => {
  const { rimGirth, openingGirth, height } = slope;
  const fullness = rimGirth - openingGirth;
  const lean = Math.asin(reachOf(slope) / height);
  const edges: readonly Figure[] = [
    {
      name: 'Top edge of one piece',
      formula: 'crown girth ÷ number of pieces',
      worked: words`${exactMm(rimGirth)} ÷ ${count(pieces)} = ${exactMm(rimGirth / pieces)}`,
    },
    {
      name: 'Bottom edge of one piece',
      formula: 'finished girth ÷ number of pieces',
      worked: words`${exactMm(openingGirth)} ÷ ${count(pieces)} = ${exactMm(openingGirth / pieces)}`,
    },
    {
      name: 'Lean from upright',
      formula: 'arcsine of fullness ÷ (2π × height)',
      worked: words`arcsin(${exactMm(fullness)} ÷ (6.2832 × ${exactMm(height)})) = ${radians(lean)}`,
    },
  ];
  // Does the crown go straight up? Then the piece is a rectangle and has no radius.
  if (!isRound(slope.rim) || Math.abs(fullness) < 1e-6) return edges;
  const small = (openingGirth * height) / fullness;
  return [
    ...edges,
    {
      name: 'Radius of the bottom edge',
      formula: 'finished girth × height ÷ fullness',
      worked: words`${exactMm(openingGirth)} × ${exactMm(height)} ÷ ${exactMm(fullness)} = ${exactMm(small)}`,
    },
    {
      name: 'Radius of the top edge',
      formula: 'radius of the bottom edge + height',
      worked: words`${exactMm(small)} + ${exactMm(height)} = ${exactMm(small + height)}`,
    },
    {
      name: 'Angle of one piece',
      formula: 'fullness ÷ number of pieces ÷ height',
      worked: words`${exactMm(fullness)} ÷ ${count(pieces)} ÷ ${exactMm(height)} = ${radians(fullness / pieces / height)}`,
    },
  ];
};
