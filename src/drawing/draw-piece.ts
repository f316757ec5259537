import { cutLine } from '../pattern/cut-line.ts';
import { halved } from '../pattern/fold.ts';
import type { Allowances, Pattern } from '../pattern/pattern.ts';
import type { Piece } from '../pattern/piece.ts';
import { drawBody, drawWhole } from './draw-whole.ts';
import type { PieceDrawing } from './drawing.ts';
import type { DrawingOptions } from './drawing-options.ts';
import { meantLabel } from './label.ts';
import { rightOfFoldOnly } from './marks/clipped.ts';
import { isStrip } from './strip.ts';

/** Every piece of a pattern, drawn, in the pattern's order. */
export const drawPattern = (pattern: Pattern, options: DrawingOptions): PieceDrawing[] =>
  pattern.pieces.map((piece) => drawPiece(piece, pattern.allowances, options));

/** A piece, or its half on the fold if that is wished. A half that is too small for its label is drawn whole, which saves no paper worth having. */
export const drawPiece = (piece: Piece, allowances: Allowances, options: DrawingOptions): PieceDrawing =>
  (options.halves && piece.foldable ? drawHalf(piece, allowances, options) : null) ??
  drawWhole(piece, allowances, options);

const drawHalf = (piece: Piece, allowances: Allowances, options: DrawingOptions): PieceDrawing | null => {
  const { piece: half, cut, fold } = halved(piece, cutLine(piece, allowances));
  const marked = { line: fold, half: rightOfFoldOnly };
  const drawn = drawBody({ piece: half, cut, fold: marked }, allowances, options, meantLabel);
  return drawn && { ...drawn, strip: isStrip(piece) };
};
