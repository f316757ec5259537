import type { Mark, PieceDrawing } from '../../drawing/drawing.ts';
import { SMALLEST_TEXT, textStyles } from '../../drawing/roles.ts';
import { type Box, boxHeight, boxUnion, boxWidth } from '../../geometry/box.ts';
import { polygon } from '../../geometry/path.ts';
import { point } from '../../geometry/point.ts';
import { scaled, translated } from '../../geometry/transform.ts';
import { visiblePart } from '../joins.ts';
import { sheetName } from '../sheet.ts';
import { type Cell, type SheetGrid, windowOf } from '../sheet-grid.ts';
import type { Size } from '../sheet-size.ts';
import { text } from '../tag.ts';
import type { Part } from './flow.ts';

/** A small picture of how the sheets join, with the pieces on them; sheets that stay blank are named so. */
export const sheetMap =
  (cells: readonly Cell[], pieces: readonly PieceDrawing[], grid: SheetGrid, most: Size): Part =>
  (at) => {
    const whole = boxUnion(cells.map((cell) => windowOf(grid, cell)));
    const k = Math.min(most.width / boxWidth(whole), most.height / boxHeight(whole));
    const shift = point(at.x - k * whole.min.x, at.y - k * whole.max.y);
    const small = (box: Box): Box => ({
      min: point(k * box.min.x + shift.x, k * box.min.y + shift.y),
      max: point(k * box.max.x + shift.x, k * box.max.y + shift.y),
    });
    const outlines = pieces.map(
      (piece): Mark => ({
        kind: 'line',
        role: 'mark',
        path: translated(scaled(piece.silhouette, k, k), shift),
      }),
    );
    const frames = cells.flatMap((cell) =>
      frame(small(visiblePart(cell, cells, grid)), sheetName(cell), true),
    );
    const blanks = blankCells(cells).flatMap((cell) =>
      frame(small(visiblePart(cell, [], grid)), 'blank', false),
    );
    return { marks: [...outlines, ...frames, ...blanks], height: k * boxHeight(whole) };
  };

const frame = ({ min, max }: Box, name: string, printed: boolean): readonly Mark[] => {
  const size = Math.min(textStyles.sheet.size, (max.y - min.y) / 2);
  const middle = point((min.x + max.x) / 2, (min.y + max.y) / 2);
  const label = {
    ...text(printed ? 'sheet' : 'note', middle, [name], Math.max(size, SMALLEST_TEXT)),
    align: 'middle' as const,
  };
  if (!printed) return [label];
  const path = polygon([min, point(max.x, min.y), max, point(min.x, max.y)]);
  return [{ kind: 'line', role: 'sheet', path }, label];
};

/** The cells of the rectangle around the printed ones that are not printed. */
export const blankCells = (cells: readonly Cell[]): readonly Cell[] => {
  const printed = new Set(cells.map(sheetName));
  const rows = Math.max(...cells.map((c) => c.row));
  const columns = Math.max(...cells.map((c) => c.column));
  return Array.from({ length: rows + 1 }, (_, row) =>
    Array.from({ length: columns + 1 }, (_, column) => ({ row, column })),
  )
    .flat()
    .filter((cell) => !printed.has(sheetName(cell)));
};
