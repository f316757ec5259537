import { pathLength } from '../../../geometry/measure.ts';
import { isRound } from '../../../geometry/oval.ts';
import type { Piece } from '../../../pattern/piece.ts';
import type { EdgeUse } from '../../../pattern/seam.ts';
import { words } from '../../../words.ts';
import { notchesBelow } from '../seams/notches-below.ts';
import { pleatMarks } from './pleats.ts';
import { cutsOf, drawnIn, halfWayUp, linesOf, middleNotches, shapedPiece } from './side-band-piece.ts';
import { quarterShape, type SideBandShape } from './side-band-shape.ts';
import { middleIsFree, type SideBand, type SideBandWish } from './side-band-wish.ts';
import type { End } from './side-slope.ts';

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
const ENDS = words`The end marked “centre” goes to the centre front or back, the other to the side.`;

/** Four quarters of one shape: a round one is the same either way up, an oval one is turned every second time. */
export const quarters = (wish: SideBandWish): SideBand => {
  const { id, name, slope } = wish;
  const shape = quarterShape(slope, 'back');
  const round = isRound(slope.rim);
  const sewn = drawnIn(wish, 4, 'back', shape, () => []);
  // Every second quarter lies face down.
  const turns = [0, 1, 2, 3].map((copy) => ({ piece: id, copy, turned: !round && copy % 2 === 1 }));
  const notches = middleNotches(shape, MIDDLE, 1);
  const piece: Piece = {
    ...shapedPiece(shape, slope, wish.lower),
    id,
    name,
    cuts: cutsOf(wish, { count: 4, ...(round ? {} : { mirrored: 2 }) }),
    foldable: round,
    notches: [
      ...notches,
      ...notchesBelow(wish.seamsBelow ?? [], {
        edge: 'bottom',
        length: pathLength(shape.bottom),
        places: turns.map(({ copy, turned }) => ({ from: copy / 4, to: (copy + 1) / 4, turned })),
        symmetric: round,
        notches,
      }),
    ],
    figures: sewn.figures,
    notes: round ? sewn.notes : [ENDS, ...sewn.notes],
    marks: round ? sewn.marks : [...sewn.marks, ...endNames(shape, 'centre')],
  };
  return { pieces: [piece], ...roundOf(turns) };
};

/** Front and back quarters, the second copy of each face down. */
export const pairs = (wish: SideBandWish): SideBand => {
  const [front, rear] = [pairPiece(wish, 'front'), pairPiece(wish, 'back')];
  return {
    pieces: [front, rear],
    ...roundOf([
      { piece: rear.id, copy: 0, turned: false },
      { piece: front.id, copy: 1, turned: true },
      { piece: front.id, copy: 0, turned: false },
      { piece: rear.id, copy: 1, turned: true },
    ]),
  };
};

const pairPiece = (wish: SideBandWish, end: End): Piece => {
  const { id, name, slope } = wish;
  const shape = quarterShape(slope, end);
  const lines = linesOf(wish, shape);
  const sewn = drawnIn(wish, 4, end, shape, (pleats) =>
    pleatMarks(shape.bottom, 0, pleats, end === 'front' ? 'end' : 'start', lines),
  );
  const piece = shapedPiece(shape, slope, wish.lower, lines);
  return {
    ...piece,
    ...sewn,
    id: `${id}${end === 'front' ? 'Front' : 'Back'}`,
    name: `${name}, ${end}`,
    cuts: cutsOf(wish, { count: 2, mirrored: 1 }),
    foldable: false,
    notches: middleNotches(shape, MIDDLE, 1).filter(
      ({ edge }) => edge === 'top' || middleIsFree(wish.pleats),
    ),
    marks: [...sewn.marks, ...endNames(shape, `centre ${end}`)],
    dimensions: [...piece.dimensions, { name: `Height at the centre ${end}`, along: shape.left }],
  };
};

const endNames = (shape: SideBandShape, centre: string): Piece['marks'] => [
  { kind: 'text', text: centre, at: halfWayUp(shape, 0.06) },
  { kind: 'text', text: 'side', at: halfWayUp(shape, 0.94) },
];
