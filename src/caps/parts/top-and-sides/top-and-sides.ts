import type { Piece } from '../../../pattern/piece.ts';
import type { EdgeUse, Seam } from '../../../pattern/seam.ts';
import { back, one, plain } from '../seams/seam.ts';
import type { LayerWish } from './layer-wish.ts';
import { sidePiece } from './side-piece.ts';
import { topPiece } from './top-piece.ts';

/** A top and two sides, in one layer of cloth. */
export interface TopAndSides {
  readonly pieces: readonly [Piece, Piece];
  /** The two long seams, from the back to the front. */
  readonly seams: readonly Seam[];
  /** The lower edge all the way round, starting and ending at the centre back. */
  readonly lower: readonly EdgeUse[];
}

const ids = {
  shell: { top: 'top', side: 'side', seam: 'long' },
  lining: { top: 'liningTop', side: 'liningSide', seam: 'liningLong' },
} as const;

export const topAndSides = (wish: LayerWish): TopAndSides => {
  const { layer, topName, opening } = wish;
  const { top, side, seam } = ids[layer];
  const named = (name: string) => (layer === 'shell' ? name : `Lining ${name.toLowerCase()}`);
  const half = opening.backLength / 2;
  return {
    pieces: [topPiece(wish, top, named(topName)), sidePiece(wish, side, named('Side'))],
    seams: [
      plain(
        `${seam}1`,
        `${named(topName)} to side, right`,
        'gore',
        [one(top, 'right')],
        [back(side, 'seam')],
      ),
      plain(
        `${seam}2`,
        `${named(topName)} to side, left`,
        'gore',
        [back(top, 'left')],
        [back(side, 'seam', 1)],
      ),
    ],
    lower: [
      { ...one(top, 'back'), from: half, to: opening.backLength },
      one(side, 'lower'),
      one(top, 'front'),
      back(side, 'lower', 1),
      { ...one(top, 'back'), from: 0, to: half },
    ],
  };
};
