import { cutWords } from '../../drawing/cut-words.ts';
import type { PieceDrawing } from '../../drawing/drawing.ts';
import { column, type Part, paragraph } from './flow.ts';

/** One part for each piece: its name, and how many to cut from what. */
export const pieceParts = (pieces: readonly PieceDrawing[], width: number): readonly Part[] =>
  pieces.map((piece) => {
    const cuts = (piece.cuts ?? []).map(cutWords).join(' · ');
    const words = piece.onFold && cuts !== '' ? `${cuts}, on the fold` : cuts;
    return column([
      paragraph('sheet', piece.name, width, words === '' ? 1.4 : 0),
      ...(words === '' ? [] : [paragraph('note', words, width, 1.4)]),
    ]);
  });
