import { boundsOf } from '../geometry/bounds.ts';
import { boxUnion } from '../geometry/box.ts';
import type { Line, Path } from '../geometry/path.ts';
import { cutLine } from '../pattern/cut-line.ts';
import { FOLD_EDGE, halved } from '../pattern/fold.ts';
import type { Allowances, Pattern } from '../pattern/pattern.ts';
import type { Piece } from '../pattern/piece.ts';
import type { LineMark, Mark, PieceDrawing } from './drawing.ts';
import type { DrawingOptions } from './drawing-options.ts';
import { type LabelSite, meantLabel, type PlacedLabel, squeezedLabel } from './label.ts';
import { labelWords } from './label-words.ts';
import { foldMarks } from './marks/fold-line.ts';
import { grainMarks } from './marks/grain.ts';
import { dimensionsOf, notchesOf, pieceMarks } from './marks-of.ts';
import { segmentsOf } from './segment.ts';
import { isStrip } from './strip.ts';

/** Every piece of a pattern, drawn, in the pattern's order. */
export const drawPattern = (pattern: Pattern, options: DrawingOptions): PieceDrawing[] =>
  pattern.pieces.map((piece) => drawPiece(piece, pattern.allowances, options));

/**
 * A piece as lines and texts by role, mm: the one place that decides what is drawn, for every output. A half that is too
 * small for its label is drawn whole, which saves no paper worth having; a whole piece that is too small for label and
 * grainline as they were meant has its grainline moved aside.
 */
export const drawPiece = (piece: Piece, allowances: Allowances, options: DrawingOptions): PieceDrawing => {
  const cut = cutLine(piece, allowances);
  const whole: Body = { piece, cut, fold: null };
  const half: Body | null = options.halves && piece.foldable ? halved(piece, cut) : null;
  const drawn =
    (half && drawBody(half, allowances, options, meantLabel)) ??
    drawBody(whole, allowances, options, meantLabel) ??
    drawBody(whole, allowances, options, squeezedLabel)!;
  return { ...drawn, strip: isStrip(piece) };
};

/** A whole piece, or the half of one with its fold. */
interface Body {
  readonly piece: Piece;
  readonly cut: readonly Path[];
  readonly fold: Line | null;
}

const drawBody = (
  { piece, cut, fold }: Body,
  allowances: Allowances,
  options: DrawingOptions,
  placeLabel: (site: LabelSite) => PlacedLabel | null,
): PieceDrawing | null => {
  const onFold = fold !== null;
  const silhouette: Path = fold ? [...cut.flat(), fold] : cut.flat();
  // Its lines.
  const folds = fold ? foldMarks(fold) : [];
  const marks = pieceMarks(piece);
  const centres = piece.centreLines.map(
    (path): LineMark => ({ ...line('centre', path), ...centreTone(piece) }),
  );
  const dimensions = options.dimensions ? dimensionsOf(piece, onFold, options.unit) : [];
  // Its label and grainline, where they lie on nothing if that can be.
  const placed = placeLabel({
    ...labelWords(piece, allowances, options.label, onFold, options.unit),
    wanted: piece.labelAt,
    grain: piece.grain,
    walls: segmentsOf(piece.outline.flatMap((e) => e.path)),
    silhouette: segmentsOf(silhouette),
    clear: [...folds, ...marks],
    rather: [...centres, ...dimensions],
  });
  if (!placed) return null;
  const lines = [
    ...outlineMarks(piece, cut),
    ...notchesOf(piece, allowances, onFold),
    ...centres,
    ...folds,
    ...grainMarks(placed.grain),
    ...marks.filter((mark) => mark.kind === 'line' || !placed.nameless),
    ...dimensions,
  ];
  return {
    id: piece.id,
    name: piece.name,
    marks: [...lines, ...placed.label],
    silhouette,
    bounds: boxUnion([silhouette, ...linePaths(marks)].map(boundsOf)),
    cuts: piece.cuts,
    onFold,
  };
};

/** Of what is drawn, only a piece's marks can reach past its cut line. */
const linePaths = (marks: readonly Mark[]): Path[] =>
  marks.flatMap((mark) => (mark.kind === 'line' ? [mark.path] : []));

const line = (role: LineMark['role'], path: Path): LineMark => ({ kind: 'line', role, path });

/** The cut line, and the stitch line inside it where they are not the same. The fold is drawn as a fold. */
const outlineMarks = (piece: Piece, cut: readonly Path[]): LineMark[] => {
  const sewn = piece.outline.filter((e) => e.name !== FOLD_EDGE);
  const cutMark = line('cut', cut.flat());
  return sewn.every((e) => e.kind === 'none')
    ? [cutMark]
    : [
        cutMark,
        line(
          'stitch',
          sewn.flatMap((e) => e.path),
        ),
      ];
};

const centreTone = (piece: Piece): { tone: 'madder' } | object =>
  piece.id === 'visor' || piece.id === 'visorUnder' ? { tone: 'madder' } : {};
