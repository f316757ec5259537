import { boundsOf } from '../geometry/bounds.ts';
import { boxUnion } from '../geometry/box.ts';
import type { Path } from '../geometry/path.ts';
import { cutLine } from '../pattern/cut-line.ts';
import { FOLD_EDGE, halved } from '../pattern/fold.ts';
import type { Allowances, Pattern } from '../pattern/pattern.ts';
import type { Piece } from '../pattern/piece.ts';
import type { LineMark, Mark, PieceDrawing } from './drawing.ts';
import type { DrawingOptions } from './drawing-options.ts';
import { labelMarks } from './label.ts';
import { foldMarks } from './marks/fold-line.ts';
import { grainMarks } from './marks/grain.ts';
import { dimensionsOf, notchesOf, pieceMarks } from './marks-of.ts';
import { segmentsOf } from './segment.ts';
import { isStrip } from './strip.ts';

/** Every piece of a pattern, drawn, in the pattern's order. */
export const drawPattern = (pattern: Pattern, options: DrawingOptions): PieceDrawing[] =>
  pattern.pieces.map((piece) => drawPiece(piece, pattern.allowances, options));

/** A piece as lines and texts by role, mm: the one place that decides what is drawn, for every output. */
export const drawPiece = (whole: Piece, allowances: Allowances, options: DrawingOptions): PieceDrawing => {
  // The piece and its cut line, halved if wished.
  const wholeCut = cutLine(whole, allowances);
  const half = options.halves && whole.foldable ? halved(whole, wholeCut) : null;
  const { piece, cut } = half ?? { piece: whole, cut: wholeCut };
  const silhouette: Path = half ? [...cut.flat(), half.fold] : cut.flat();
  // Its lines.
  const walls = segmentsOf(piece.outline.flatMap((e) => e.path));
  const fold = half ? foldMarks(half.fold) : [];
  const grain = grainMarks(piece.grain);
  const marks = pieceMarks(piece);
  const centres = piece.centreLines.map(
    (path): LineMark => ({ ...line('centre', path), ...centreTone(piece) }),
  );
  const dimensions = options.dimensions ? dimensionsOf(piece, half !== null, options.unit) : [];
  // Its label, where it lies on none of them if that can be.
  const label = labelMarks({
    piece,
    allowances,
    options,
    onFold: half !== null,
    walls,
    silhouette: segmentsOf(silhouette),
    clear: [...grain, ...fold, ...marks],
    rather: [...centres, ...dimensions],
  });
  const lines = [
    ...outlineMarks(piece, cut),
    ...notchesOf(piece, allowances, half !== null),
    ...centres,
    ...fold,
    ...grain,
    ...marks,
    ...dimensions,
  ];
  return {
    id: piece.id,
    name: piece.name,
    marks: [...lines, ...label],
    silhouette,
    bounds: boxUnion([silhouette, ...linePaths(marks)].map(boundsOf)),
    cuts: piece.cuts,
    onFold: half !== null,
    strip: isStrip(whole),
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
  piece.id === 'visor' ? { tone: 'madder' } : {};
