import { cutWords } from '../../drawing/cut-words.ts';
import type { PieceDrawing } from '../../drawing/drawing.ts';
import { boundsOf } from '../../geometry/bounds.ts';
import { boxHeight, boxWidth } from '../../geometry/box.ts';
import { formatLength, type Unit } from '../../units.ts';

/** A piece in a line of words: its size as cut, width by height, and how many. */
export interface PieceWords {
  readonly id: string;
  readonly name: string;
  readonly size: string;
  readonly cuts: string;
}

export const pieceWords = (drawing: PieceDrawing, unit: Unit): PieceWords => {
  const box = boundsOf(drawing.silhouette);
  const [width, height] = [boxWidth(box), boxHeight(box)];
  return {
    id: drawing.id,
    name: drawing.name,
    size: `${formatLength(width, unit, { bare: true })} × ${formatLength(height, unit)}${drawing.onFold ? ' on the fold' : ''}`,
    cuts: (drawing.cuts ?? []).map(cutWords).join(', '),
  };
};

/** The piece that a picture names: the one that is lit, or else the one that is chosen. */
export const named = (
  pieces: readonly PieceWords[],
  { lit, chosen }: { readonly lit: string | null; readonly chosen: string | null },
): PieceWords | null => pieces.find(({ id }) => id === (lit ?? chosen)) ?? null;
