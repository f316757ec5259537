import { boundsOf } from '../geometry/bounds.ts';
import { boxUnion } from '../geometry/box.ts';
import type { Line, Path } from '../geometry/path.ts';
import { cutLine } from '../pattern/cut-line.ts';
import { FOLD_EDGE } from '../pattern/fold-edge.ts';
import type { Allowances } from '../pattern/pattern.ts';
import type { Piece } from '../pattern/piece.ts';
import type { LineMark, Mark, PieceDrawing } from './drawing.ts';
import type { DrawingOptions } from './drawing-options.ts';
import { type LabelSite, meantLabel, type PlacedLabel, squeezedLabel } from './label.ts';
import { labelWords } from './label-words.ts';
import { foldMarks } from './marks/fold-line.ts';
import { grainMarks } from './marks/grain.ts';
import { outerRows, rowMarks } from './marks/row.ts';
import { dimensionsOf, notchesOf, pieceMarks } from './marks-of.ts';
import { segmentsOf } from './segment.ts';
import { isStrip } from './strip.ts';

/**
 * A piece as lines and texts by role, mm: the one place that decides what is drawn, for every output. A piece that is too
 * small for label and grainline as they were meant has its grainline moved aside.
 */
export const drawWhole = (piece: Piece, allowances: Allowances, options: DrawingOptions): PieceDrawing => {
  const body: Body = { piece, cut: cutLine(piece, allowances), fold: null };
  const drawn =
    drawBody(body, allowances, options, meantLabel) ?? drawBody(body, allowances, options, squeezedLabel)!;
  return { ...drawn, strip: isStrip(piece) };
};

/** A whole piece, or the half of one with its fold. */
export interface Body {
  readonly piece: Piece;
  readonly cut: readonly Path[];
  readonly fold: Fold | null;
}

/** Where a half piece is folded, and what is left of a small mark on it. */
interface Fold {
  readonly line: Line;
  readonly half: (mark: LineMark) => readonly LineMark[];
}

/** Null where the label has no room. */
export const drawBody = (
  { piece, cut, fold }: Body,
  allowances: Allowances,
  options: DrawingOptions,
  placeLabel: (site: LabelSite) => PlacedLabel | null,
): PieceDrawing | null => {
  const onFold = fold !== null;
  const silhouette: Path = fold ? [...cut.flat(), fold.line] : cut.flat();
  // Its lines.
  const whole = notchesOf(piece, allowances);
  const notches = fold ? whole.flatMap(fold.half) : whole;
  const marks = pieceMarks(piece);
  const rows = rowMarks(piece, outerRows(piece.rows ?? []));
  const centres = piece.centreLines.map(
    (path): LineMark => ({ ...line('centre', path), ...centreTone(piece) }),
  );
  const folds = fold ? foldMarks(fold.line, [...rows, ...centres, ...marks]) : [];
  const dimensions = options.dimensions ? dimensionsOf(piece, onFold, options.unit) : [];
  // Its label and grainline, where they lie on nothing if that can be.
  const words = labelWords(piece, allowances, options.label, onFold, options.unit);
  const within = piece.outline.flatMap((e) => e.path);
  const placed = placeLabel({
    ...words,
    wanted: piece.labelAt,
    grain: piece.grain,
    walls: segmentsOf(within),
    silhouette: segmentsOf(silhouette),
    clear: [...folds, ...notches, ...marks],
    // On the table a name has a rim of its own: it may lie on a row.
    rows: options.label ? rows.flatMap(({ path }) => segmentsOf(path)) : [],
    rather: [...centres, ...dimensions],
  });
  if (!placed) return null;
  const lines = [
    ...outlineMarks(piece, cut),
    ...notches,
    ...rows,
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
    label: { words, within },
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
