import { pathLength } from '../../../geometry/measure.ts';
import { isRound } from '../../../geometry/oval.ts';
import type { Cut, Piece } from '../../../pattern/piece.ts';
import type { EdgeUse } from '../../../pattern/seam.ts';
import { words } from '../../../words.ts';
import { onBothSides, pleatFigure, pleatMarks, pleatNote, pleatsFor } from './pleats.ts';
import { sideBandFigures } from './side-band-figures.ts';
import { halfWayUp, middleNotches, shapedPiece } from './side-band-piece.ts';
import { halfShape, quarterShape, type SideBandShape } from './side-band-shape.ts';
import type { End, SideSlope } from './side-slope.ts';

export interface SideBandWish {
  readonly id: string;
  readonly name: string;
  readonly cloth: Cut['cloth'];
  readonly slope: SideSlope;
  readonly pieces: '2' | '4';
  /** By what part the lower edge is longer than what it is sewn to; 0 for a plain seam. */
  readonly gather: number;
  /** Pleats in each quarter of the lower edge that take up what is gathered otherwise; 0 for none. */
  readonly pleats: number;
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

/** Halves, four quarters of one shape, or front and back quarters in mirrored pairs where the two are not the same. */
export type SideBandScheme = 'halves' | 'quarters' | 'pairs';

export const sideBandScheme = (pieces: '2' | '4', tilt: number, pleats: number): SideBandScheme =>
  pieces === '2' ? 'halves' : tilt !== 0 || pleats > 0 ? 'pairs' : 'quarters';

export const sideBand = (wish: SideBandWish): SideBand => {
  const scheme = sideBandScheme(wish.pieces, wish.slope.tilt, wish.pleats);
  if (scheme === 'halves') return halves(wish);
  return scheme === 'pairs' ? pairs(wish) : quarters(wish);
};

const halves = (wish: SideBandWish): SideBand => {
  const front = halfPiece(wish, 'front');
  // Under a level rim the back is the front again.
  const back = halfPiece(wish, 'back', wish.slope.tilt === 0 ? front.shape : undefined);
  const round = (edge: 'top' | 'bottom', backwards: boolean): readonly EdgeUse[] => {
    const length = pathLength(back.shape[edge]);
    return [
      { piece: back.piece.id, copy: 0, edge, backwards, from: length / 2, to: length },
      { piece: front.piece.id, copy: 0, edge, backwards },
      { piece: back.piece.id, copy: 0, edge, backwards, from: 0, to: length / 2 },
    ];
  };
  const join = (left: Piece, right: Piece) => ({
    name: 'side',
    a: { piece: left.id, copy: 0, edge: 'right' },
    b: { piece: right.id, copy: 0, edge: 'left', backwards: true },
  });
  return {
    pieces: [front.piece, back.piece],
    top: round('top', true),
    bottom: round('bottom', false),
    joins: [join(back.piece, front.piece), join(front.piece, back.piece)],
  };
};

const halfPiece = (wish: SideBandWish, end: End, known?: SideBandShape) => {
  const { id, name, cloth, slope } = wish;
  const shape = known ?? halfShape(slope, end);
  const half = pathLength(shape.bottom) / 2;
  const piece: Piece = {
    ...shapedPiece(shape, slope),
    id: `${id}${end === 'front' ? 'Front' : 'Back'}`,
    name: `${name}, ${end}`,
    cuts: [{ cloth, count: 1 }],
    foldable: true,
    notches: middleNotches(shape, `centre ${end}`, end === 'back' ? 2 : 1),
    ...pleatsOf(wish, 2, end, (pleats) =>
      onBothSides(pleatMarks(shape.bottom, half, pleats, end === 'front' ? 'end' : 'start')),
    ),
  };
  return { shape, piece };
};

/** A quarter on its way round: which piece, and whether it lies face down, so that it is walked the other way. */
interface Turn {
  readonly piece: string;
  readonly copy: number;
  readonly turned: boolean;
}

/** Names of the four joins, going round from the centre back. */
const QUARTER_JOINS = ['side', 'centre front', 'side', 'centre back'];

const roundOf = (turns: readonly Turn[]): Omit<SideBand, 'pieces'> => {
  const use = ({ piece, copy, turned }: Turn, edge: 'top' | 'bottom'): EdgeUse => ({
    piece,
    copy,
    edge,
    backwards: (edge === 'top') !== turned,
  });
  const end = ({ piece, copy, turned }: Turn, side: 'left' | 'right'): EdgeUse => {
    const edge = turned ? (side === 'left' ? 'right' : 'left') : side;
    return { piece, copy, edge, backwards: edge === 'left' };
  };
  return {
    top: turns.map((turn) => use(turn, 'top')),
    bottom: turns.map((turn) => use(turn, 'bottom')),
    joins: turns.map((turn, i) => ({
      name: QUARTER_JOINS[i]!,
      a: end(turn, 'right'),
      b: end(turns[(i + 1) % 4]!, 'left'),
    })),
  };
};

const MIDDLE = 'middle of the quarter';

const quarters = (wish: SideBandWish): SideBand => {
  const { id, name, cloth, slope } = wish;
  const shape = quarterShape(slope, 'back');
  const round = isRound(slope.rim);
  const piece: Piece = {
    ...shapedPiece(shape, slope),
    id,
    name,
    cuts: [{ cloth, count: 4, ...(round ? {} : { mirrored: 2 }) }],
    foldable: round,
    notches: middleNotches(shape, MIDDLE, 1),
    figures: sideBandFigures(slope, 4, wish.gather, 'back'),
    notes: round
      ? []
      : [words`The end marked “centre” goes to the centre front or back, the other to the side.`],
    marks: round ? [] : endNames(shape, 'centre'),
  };
  // Every second quarter lies face down.
  const turns = [0, 1, 2, 3].map((copy) => ({ piece: id, copy, turned: !round && copy % 2 === 1 }));
  return { pieces: [piece], ...roundOf(turns) };
};

/** Front and back quarters, the second copy of each face down. */
const pairs = (wish: SideBandWish): SideBand => {
  const [front, back] = [pairPiece(wish, 'front'), pairPiece(wish, 'back')];
  return {
    pieces: [front, back],
    ...roundOf([
      { piece: back.id, copy: 0, turned: false },
      { piece: front.id, copy: 1, turned: true },
      { piece: front.id, copy: 0, turned: false },
      { piece: back.id, copy: 1, turned: true },
    ]),
  };
};

const pairPiece = (wish: SideBandWish, end: End): Piece => {
  const { id, name, cloth, slope } = wish;
  const shape = quarterShape(slope, end);
  const sewn = pleatsOf(wish, 4, end, (pleats) =>
    pleatMarks(shape.bottom, 0, pleats, end === 'front' ? 'end' : 'start'),
  );
  const piece = shapedPiece(shape, slope);
  return {
    ...piece,
    ...sewn,
    id: `${id}${end === 'front' ? 'Front' : 'Back'}`,
    name: `${name}, ${end}`,
    cuts: [{ cloth, count: 2, mirrored: 1 }],
    foldable: false,
    notches: middleNotches(shape, MIDDLE, 1).filter(
      ({ edge }) => edge === 'top' || middleIsFree(wish.pleats),
    ),
    marks: [...sewn.marks, ...endNames(shape, `centre ${end}`)],
    dimensions: [...piece.dimensions, { name: `Height at the centre ${end}`, along: shape.left }],
  };
};

/** Whether the middle of a quarter's lower edge does not vanish in a pleat. */
export const middleIsFree = (pleats: number): boolean => pleats % 2 === 0;

const endNames = (shape: SideBandShape, centre: string): Piece['marks'] => [
  { kind: 'text', text: centre, at: halfWayUp(shape, 0.06) },
  { kind: 'text', text: 'side', at: halfWayUp(shape, 0.94) },
];

/** What a piece says and shows of its pleats. */
const pleatsOf = (
  { slope, gather, pleats }: SideBandWish,
  pieces: number,
  end: End,
  marksOf: (pleats: ReturnType<typeof pleatsFor>) => Piece['marks'],
): Pick<Piece, 'figures' | 'notes' | 'marks'> => {
  const figures = sideBandFigures(slope, pieces, gather, end);
  if (pleats === 0 || gather === 0) return { figures, notes: [], marks: [] };
  const each = pleatsFor(slope.openingGirth, gather, pleats);
  return {
    figures: [...figures, pleatFigure(slope.openingGirth, gather, each)],
    notes: [pleatNote],
    marks: marksOf(each),
  };
};
