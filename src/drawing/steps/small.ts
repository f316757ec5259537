import { grown } from '../../cloth/grown.ts';
import type { Path } from '../../geometry/path.ts';
import { cutLine } from '../../pattern/cut-line.ts';
import type { Allowances } from '../../pattern/pattern.ts';
import type { Piece, PieceMark, SeamKind, StitchRow } from '../../pattern/piece.ts';
import type { LineMark } from '../drawing.ts';
import { rowMarks } from '../marks/row.ts';
import { pieceMarks } from '../marks-of.ts';

/** A piece and its allowances drawn small: everything on it in the same proportion. */
export interface Small {
  readonly piece: Piece;
  readonly allowances: Allowances;
  readonly cut: Path;
  readonly stitch: Path;
  readonly scale: number;
}

export const small = (piece: Piece, allowances: Allowances, k: number): Small => {
  const less = Object.fromEntries(
    Object.entries(allowances).map(([kind, width]) => [kind, width * k]),
  ) as Record<SeamKind, number>;
  const shrunk = grown(piece, { along: k, across: k });
  const marks = shrunk.marks.map(
    (mark): PieceMark => ('diameter' in mark ? { ...mark, diameter: mark.diameter * k } : mark),
  );
  const one = { ...shrunk, marks };
  return {
    piece: one,
    allowances: less,
    cut: cutLine(one, less).flat(),
    stitch: one.outline.flatMap(({ path }) => path),
    scale: k,
  };
};

/** Rows of stitches that are sewn, at their distances. */
export const rowsOnSmall = (
  { piece, scale }: Small,
  rows: readonly (StitchRow & { readonly piece: string })[],
): readonly LineMark[] => {
  const own = rows.filter((row) => row.piece === piece.id);
  return rowMarks(
    piece,
    own.map((row) => ({ ...row, at: row.at * scale })),
    // Many rows in heavy lines would make a dark patch.
    own.length > 4 ? 'row' : 'sew',
  ).map((mark) => ({ ...mark, tone: 'madder' as const }));
};

/** Buttons, buttonholes, pleats and marked stretches; their names are said in the step. */
export const marksOnSmall = ({ piece }: Small): readonly LineMark[] =>
  pieceMarks(piece).filter((mark) => mark.kind === 'line');
