import { pathLength } from '../../../geometry/measure.ts';
import type { Notch, Piece } from '../../../pattern/piece.ts';
import type { EdgeUse } from '../../../pattern/seam.ts';
import { quarterNotches } from '../girth-notches.ts';
import { type LowerPlace, notchesBelow } from '../seams/notches-below.ts';
import { onBothSides, pleatMarks } from './pleats.ts';
import { cutsOf, drawnIn, linesOf, middleNotches, shapedPiece } from './side-band-piece.ts';
import { halfShape, type SideBandShape, wholeShape } from './side-band-shape.ts';
import type { SideBand, SideBandWish } from './side-band-wish.ts';
import type { End } from './side-slope.ts';

/** The whole ring in one piece, the centre front in its middle, its ends meeting at the centre back. */
export const whole = (wish: SideBandWish): SideBand => {
  const { id, name, slope } = wish;
  const shape = wholeShape(slope);
  const lines = linesOf(wish, shape);
  const [lower, upper] = [pathLength(shape.bottom), pathLength(shape.top)];
  const piece: Piece = {
    ...shapedPiece(shape, slope, wish.lower, lines),
    id,
    name,
    cuts: cutsOf(wish, { count: 1 }),
    foldable: true,
    notches: withSeamsBelow(wish, lower, { from: 0, to: 1 }, [
      ...quarterNotches('bottom', lower),
      ...quarterNotches('top', upper),
    ]),
    ...drawnIn(wish, 1, 'back', shape, ({ count, take }) =>
      onBothSides(pleatMarks(shape.bottom, lower / 2, { count: 2 * count, take }, 'end', lines)),
    ),
  };
  const use = (edge: string, backwards: boolean) => ({ piece: id, copy: 0, edge, backwards });
  return {
    pieces: [piece],
    top: [use('top', true)],
    bottom: [use('bottom', false)],
    joins: [{ name: 'centre back', a: use('right', false), b: use('left', true) }],
  };
};

/** Front and back halves with side seams. */
export const halves = (wish: SideBandWish): SideBand => {
  const front = halfPiece(wish, 'front');
  // Under a level rim the back is the front again.
  const rear = halfPiece(wish, 'back', wish.slope.tilt === 0 ? front.shape : undefined);
  const round = (edge: 'top' | 'bottom', backwards: boolean): readonly EdgeUse[] => {
    const length = pathLength(rear.shape[edge]);
    return [
      { piece: rear.piece.id, copy: 0, edge, backwards, from: length / 2, to: length },
      { piece: front.piece.id, copy: 0, edge, backwards },
      { piece: rear.piece.id, copy: 0, edge, backwards, from: 0, to: length / 2 },
    ];
  };
  const join = (left: Piece, right: Piece) => ({
    name: 'side',
    a: { piece: left.id, copy: 0, edge: 'right' },
    b: { piece: right.id, copy: 0, edge: 'left', backwards: true },
  });
  return {
    pieces: [front.piece, rear.piece],
    top: round('top', true),
    bottom: round('bottom', false),
    joins: [join(rear.piece, front.piece), join(front.piece, rear.piece)],
  };
};

const halfPiece = (wish: SideBandWish, end: End, known?: SideBandShape) => {
  const { id, name, slope } = wish;
  const shape = known ?? halfShape(slope, end);
  const half = pathLength(shape.bottom) / 2;
  const lines = linesOf(wish, shape);
  const piece: Piece = {
    ...shapedPiece(shape, slope, wish.lower, lines),
    id: `${id}${end === 'front' ? 'Front' : 'Back'}`,
    name: `${name}, ${end}`,
    cuts: cutsOf(wish, { count: 1 }),
    foldable: true,
    notches: withSeamsBelow(
      wish,
      2 * half,
      end === 'front' ? { from: 1 / 4, to: 3 / 4 } : { from: -1 / 4, to: 1 / 4 },
      middleNotches(shape, `centre ${end}`, end === 'back' ? 2 : 1),
    ),
    ...drawnIn(wish, 2, end, shape, (pleats) =>
      onBothSides(pleatMarks(shape.bottom, half, pleats, end === 'front' ? 'end' : 'start', lines)),
    ),
  };
  return { shape, piece };
};

const withSeamsBelow = (
  { seamsBelow = [] }: SideBandWish,
  length: number,
  place: LowerPlace,
  notches: readonly Notch[],
): readonly Notch[] => [
  ...notches,
  ...notchesBelow(seamsBelow, { edge: 'bottom', length, places: [place], symmetric: true, notches }),
];
