import type { Mark, PieceDrawing } from '../../drawing/drawing.ts';
import { textStyles } from '../../drawing/roles.ts';
import { textWidth } from '../../drawing/text-width.ts';
import { type Box, boxHeight, boxUnion, boxWidth } from '../../geometry/box.ts';
import { polygon } from '../../geometry/path.ts';
import { type Point, point } from '../../geometry/point.ts';
import { scaled, translated } from '../../geometry/transform.ts';
import { clutterOf, takeSpot } from '../clutter.ts';
import { visiblePart } from '../joins.ts';
import { sheetName } from '../sheet.ts';
import { type Cell, type SheetGrid, windowOf } from '../sheet-grid.ts';
import type { Size } from '../sheet-size.ts';
import { text } from '../tag.ts';

/** A small picture of how the sheets join, with the pieces on them; sheets that stay blank are named so. */
export const sheetMap =
  (cells: readonly Cell[], pieces: readonly PieceDrawing[], grid: SheetGrid, most: Size) => (at: Point) => {
    const whole = boxUnion(cells.map((cell) => windowOf(grid, cell)));
    const k = Math.min(most.width / boxWidth(whole), most.height / boxHeight(whole));
    const shift = point(at.x - k * whole.min.x, at.y - k * whole.max.y);
    const small = (box: Box): Box => ({
      min: point(k * box.min.x + shift.x, k * box.min.y + shift.y),
      max: point(k * box.max.x + shift.x, k * box.max.y + shift.y),
    });
    const outlines = pieces.map((p) => translated(scaled(p.silhouette, k, k), shift));
    const shown = cells.map((cell) => ({
      name: sheetName(cell),
      box: small(visiblePart(cell, cells, grid)),
    }));
    const drawn: readonly Mark[] = [
      ...shown.map(({ box }) => frame(box)),
      ...outlines.map((path): Mark => ({ kind: 'line', role: 'mark', path })),
    ];
    const blanks = blankCells(cells).map((cell) => {
      const { min, max } = small(visiblePart(cell, [], grid));
      return {
        ...text('note', point((min.x + max.x) / 2, (min.y + max.y) / 2), ['blank']),
        align: 'middle' as const,
      };
    });
    const names = shown.map(({ name, box }) => nameIn(name, box, drawn));
    return {
      marks: [...drawn, ...names, ...blanks],
      height: k * boxHeight(whole),
      width: k * boxWidth(whole),
    };
  };

const frame = ({ min, max }: Box): Mark => ({
  kind: 'line',
  role: 'dimension',
  path: polygon([min, point(max.x, min.y), max, point(min.x, max.y)]),
});

/** A sheet's name near its middle, where it covers no outline if that can be. */
const nameIn = (name: string, box: Box, drawn: readonly Mark[]): Mark => {
  const { size } = textStyles.sheet;
  const block = { width: textWidth(name, true) * size + 1.5, height: size };
  const middle = point((box.min.x + box.max.x - block.width) / 2, (box.min.y + box.max.y - block.height) / 2);
  const at = takeSpot(clutterOf(box, drawn), block, middle);
  return text('sheet', point(at.x + 1, at.y + block.height / 2), [name]);
};

/** The cells of the rectangle around the printed ones that are not printed. */
const blankCells = (cells: readonly Cell[]): readonly Cell[] => {
  const printed = new Set(cells.map(sheetName));
  const rows = Math.max(...cells.map((c) => c.row));
  const columns = Math.max(...cells.map((c) => c.column));
  return Array.from({ length: rows + 1 }, (_, row) =>
    Array.from({ length: columns + 1 }, (_, column) => ({ row, column })),
  )
    .flat()
    .filter((cell) => !printed.has(sheetName(cell)));
};
