import { allCloths, type Cloth, type Piece } from './piece.ts';

/** The cloths that some pieces are cut from, in their order. */
export const clothsOf = (pieces: readonly Pick<Piece, 'cuts'>[]): readonly Cloth[] =>
  allCloths.filter((cloth) => pieces.some(({ cuts }) => cuts.some((cut) => cut.cloth === cloth)));
