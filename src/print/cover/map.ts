import type { Mark, PieceDrawing } from '../../drawing/drawing.ts';
import { textStyles } from '../../drawing/roles.ts';
import { textWidth } from '../../drawing/text-width.ts';
import { type Box, boxHeight, boxUnion, boxWidth } from '../../geometry/box.ts';
import { line, polygon } from '../../geometry/path.ts';
import { type Point, point } from '../../geometry/point.ts';
import { scaled, translated } from '../../geometry/transform.ts';
import { clutterOf, takeSpot } from '../clutter.ts';
import { visiblePart } from '../joins.ts';
import { sheetName } from '../sheet.ts';
import { type Cell, type SheetGrid, windowOf } from '../sheet-grid.ts';
import type { Size } from '../sheet-size.ts';
import { text } from '../tag.ts';
import { column, paragraph, space } from './flow.ts';

/** A small picture of how the sheets join, with the pieces on them; sheets that stay blank are crossed out, and a line says so. */
export const sheetMap =
  (cells: readonly Cell[], pieces: readonly PieceDrawing[], grid: SheetGrid, most: Size) => (at: Point) => {
    const whole = boxUnion(cells.map((cell) => windowOf(grid, cell)));
    const blanks = blankCells(cells);
    const key =
      blanks.length === 0
        ? space(0)
        : column([space(1), paragraph('note', 'Crossed out: blank', most.width)]);
    const room = most.height - key(at).height;
    const k = Math.min(most.width / boxWidth(whole), room / boxHeight(whole));
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
    const crosses = blanks.map((cell) => cross(small(ownPart(cell, grid))));
    const names = shown.map(({ name, box }) => nameIn(name, box, drawn));
    const height = k * boxHeight(whole);
    const words = key(point(at.x, at.y - height));
    return {
      marks: [...drawn, ...names, ...crosses.flat(), ...words.marks],
      height: height + words.height,
      width: k * boxWidth(whole),
    };
  };

const frame = ({ min, max }: Box): Mark => ({
  kind: 'line',
  role: 'dimension',
  path: polygon([min, point(max.x, min.y), max, point(min.x, max.y)]),
});

/** What a sheet shows and none of its neighbours does. */
const ownPart = (cell: Cell, grid: SheetGrid): Box => {
  const { min, max } = windowOf(grid, cell);
  const [x, y] = [grid.window.width - grid.pitch.width, grid.window.height - grid.pitch.height];
  return { min: point(min.x + x, min.y + y), max: point(max.x - x, max.y - y) };
};

const cross = ({ min, max }: Box): readonly Mark[] =>
  [line(min, max), line(point(min.x, max.y), point(max.x, min.y))].map((stroke) => ({
    kind: 'line',
    role: 'dimension',
    path: [stroke],
  }));

/** Kept free around a sheet's name, ems. */
const AROUND = 0.5;

/** A sheet's name near its middle, no larger than it has room for, where it covers no outline if that can be. */
const nameIn = (name: string, box: Box, drawn: readonly Mark[]): Mark => {
  const ems = textWidth(name, true) + AROUND;
  const size = Math.min(textStyles.sheet.size, boxWidth(box) / ems, boxHeight(box));
  const block = { width: ems * size, height: size };
  const middle = point((box.min.x + box.max.x - block.width) / 2, (box.min.y + box.max.y - block.height) / 2);
  const at = takeSpot(clutterOf(box, drawn), block, middle);
  return text('sheet', point(at.x + (AROUND / 2) * size, at.y + size / 2), [name], size);
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
