import { flatten } from '../geometry/flatten.ts';
import type { Path } from '../geometry/path.ts';
import { direction, type Point, point, rotate, subtract } from '../geometry/point.ts';
import { PLACING } from '../geometry/tolerance.ts';
import { rotated, scaled } from '../geometry/transform.ts';
import type { NestPiece } from '../nesting/task.ts';
import { cutLine, stopsAtSeam } from '../pattern/cut-line.ts';
import { halved } from '../pattern/fold.ts';
import type { Cloth, Piece } from '../pattern/piece.ts';
import { capNames } from './cap-names.ts';
import type { ClothSpec } from './cloth.ts';
import type { LayCap, LayWish } from './lay-wish.ts';
import { liesFolded } from './lies-folded.ts';
import { rotationsOn } from './rotations-on.ts';

/** One outline to be laid on a cloth, its grain along the cloth's length. */
export interface LayPiece extends NestPiece {
  readonly piece: Piece;
  /** Of which cap it is, where several are cut together; null where there is but one. */
  readonly cap: string | null;
  /** Cut face down. */
  readonly mirrored: boolean;
  /** How it lies on the layers: through both of a fold, half of it on the fold itself, or through one layer alone. */
  readonly layers: 'single' | 'both' | 'on the fold' | 'one of two';
  /** The cut line as it is laid, before it is placed: a closed chain. */
  readonly cut: Path;
}

/**
 * Every outline that a cloth has to give for some caps, each copy by itself; of folded cloth each pair, half or single.
 * Caps of one pattern are one entry with a count, since their pieces make pairs with each other.
 */
export const layPieces = ({ caps, cloth, spec }: LayWish): readonly LayPiece[] => {
  const names = capNames(caps);
  return caps.flatMap((cap, i) =>
    piecesOf(cap, cloth, spec).map((piece) => ({
      ...piece,
      id: `${i + 1}.${piece.id}`,
      cap: caps.length > 1 ? names[i]! : null,
    })),
  );
};

/** Whether it is of the first cap of its lay: the one on the table. */
export const isOfFirstCap = ({ id }: LayPiece): boolean => id.startsWith('1.');

/** An outline of which only its cap is not known yet. */
type Outline = Omit<LayPiece, 'cap'>;

const piecesOf = ({ cutting, count: caps }: LayCap, cloth: Cloth, spec: ClothSpec): readonly Outline[] =>
  cutting.pieces.flatMap((piece) =>
    piece.cuts
      .filter((cut) => cut.cloth === cloth)
      .flatMap(({ count, mirrored = 0 }) => {
        const cut = stopsAtSeam(cloth)
          ? piece.outline.map(({ path }) => path)
          : cutLine(piece, cutting.allowances);
        return liesFolded(spec)
          ? foldedLays(piece, cut, count * caps, mirrored * caps, spec)
          : singleLays(piece, cut, count * caps, mirrored * caps, spec);
      }),
  );

const singleLays = (
  piece: Piece,
  cut: readonly Path[],
  count: number,
  mirrored: number,
  spec: ClothSpec,
): readonly Outline[] => [
  ...copies(count - mirrored, 0, () => layPiece(piece, cut.flat(), false, 'single', spec)),
  ...copies(mirrored, count - mirrored, () => layPiece(piece, cut.flat(), true, 'single', spec)),
];

const foldedLays = (
  piece: Piece,
  cut: readonly Path[],
  count: number,
  mirrored: number,
  spec: ClothSpec,
): readonly Outline[] => {
  // Two layers give a piece and its mirror image: of a symmetric piece any two copies.
  const pairs = piece.foldable ? Math.floor(count / 2) : Math.min(mirrored, count - mirrored);
  const left = count - 2 * pairs;
  const pairLays = copies(pairs, 0, () => layPiece(piece, cut.flat(), false, 'both', spec));
  const onFold = left === 1 && piece.foldable && grainRunsAlongFold(piece);
  if (onFold) {
    const half = halved(piece, cut);
    // The half stands right of its fold; on the cloth it lies above it.
    const over = piece.grain[1].y > piece.grain[0].y;
    const ring = [...half.cut.flat(), half.fold];
    return [...pairLays, ...copies(1, pairs, () => layPiece(piece, ring, over, 'on the fold', spec))];
  }
  const down = Math.max(0, mirrored - pairs);
  return [
    ...pairLays,
    ...copies(down, pairs, () => layPiece(piece, cut.flat(), true, 'one of two', spec)),
    ...copies(left - down, pairs + down, () => layPiece(piece, cut.flat(), false, 'one of two', spec)),
  ];
};

/** So many of one outline, counted on from so many others of its piece. */
const copies = (count: number, others: number, outline: () => Outline): readonly Outline[] => {
  if (count === 0) return [];
  const one = outline();
  return Array.from({ length: count }, (_, i) => ({ ...one, id: `${one.id}#${others + i + 1}` }));
};

/** A fold runs along the cloth, so only a piece whose own fold is its grain can lie on it. */
const grainRunsAlongFold = ({ grain: [foot, head] }: Piece): boolean =>
  Math.abs(head.x - foot.x) < 1e-6 * Math.abs(head.y - foot.y);

const layPiece = (
  piece: Piece,
  cut: Path,
  mirrored: boolean,
  layers: LayPiece['layers'],
  spec: ClothSpec,
): Outline => {
  const [foot, head] = piece.grain;
  const lie = -direction(subtract(head, foot));
  const polygon = flatten(cut, PLACING)
    .slice(0, -1)
    .map((p) => rotate(p, lie))
    .map((p) => turnedOver(p, mirrored));
  return {
    id: piece.id,
    piece,
    mirrored,
    layers,
    cut: mirrored ? scaled(rotated(cut, lie), 1, -1) : rotated(cut, lie),
    polygon: counterClockwise(polygon),
    rotations: layers === 'on the fold' ? [0] : rotationsOn(spec),
  };
};

const turnedOver = ({ x, y }: Point, over: boolean): Point => point(x, over ? -y : y);

const counterClockwise = (ring: readonly Point[]): readonly Point[] => {
  const twice = ring.reduce((sum, p, i) => {
    const q = ring[(i + 1) % ring.length]!;
    return sum + p.x * q.y - q.x * p.y;
  }, 0);
  return twice < 0 ? ring.toReversed() : ring;
};
