import { offsetOutline } from '../geometry/offset.ts';
import type { Path } from '../geometry/path.ts';
import type { Allowances } from './pattern.ts';
import type { Cloth, Piece, SeamKind } from './piece.ts';

/** What is added outside an edge of a kind, mm. */
export const allowanceOf = (kind: SeamKind, allowances: Allowances): number => allowances[kind] ?? 0;

/** Whether a cloth ends at the stitch line, so that no seam is thick with it (common practice). */
export const stopsAtSeam = (cloth: Cloth): boolean => cloth === 'interlining' || cloth === 'stiffener';

/**
 * The cut line of a piece: one path for each edge of its outline, in order, a closed chain at the width that each
 * edge's seam is given. A piece without allowance (a stiffener) is cut on its stitch line.
 */
export const cutLine = (piece: Piece, allowances: Allowances): Path[] => {
  const edges = piece.outline.map(({ path, kind }) => ({ path, by: allowanceOf(kind, allowances) }));
  // Nothing added anywhere? Then the stitch line is the cut line, to the last digit.
  if (edges.every((e) => e.by === 0)) return edges.map((e) => e.path);
  return offsetOutline(edges);
};
