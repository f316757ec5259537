import type { PieceDrawing } from '../../drawing/drawing.ts';
import { add, type Point, point, subtract } from '../../geometry/point.ts';
import type { Cell, SheetGrid } from '../sheet-grid.ts';
import { turnedBox, turnedDrawing, turnedPoint } from '../turned.ts';
import { type Footprint, mapped } from './footprint.ts';
import { cellBounds, neededSheets } from './needed.ts';
import type { Spot } from './spot.ts';

/** Where every piece lies on the plane of sheets, and which sheets are needed to show them all. */
export interface Placement {
  /** Turned and moved, in the order given; the first sheet's top left corner is the origin. */
  readonly pieces: readonly PieceDrawing[];
  /** In reading order; rows and columns from 0. */
  readonly cells: readonly Cell[];
  /** The windows. Where the paper is endless, cut to the length that is used. */
  readonly grid: SheetGrid;
  /** A block that came along on endless paper, where it lies. */
  readonly block?: PieceDrawing;
  /** Sheets the pieces would take unturned in rows, counting the whole rectangle around them. */
  readonly naiveSheets: number;
}

/** From where a turned footprint stood to its spot. */
const shiftTo = ({ box }: Footprint, { turn, left, top }: Spot): Point => {
  const turned = turnedBox(box, turn);
  return point(left - turned.min.x, -top - turned.max.y);
};

export const placedFootprint = (piece: Footprint, spot: Spot): Footprint => {
  const shift = shiftTo(piece, spot);
  return mapped(piece, (p) => add(turnedPoint(p, spot.turn), shift));
};

/** The sheets that pieces on their spots need. */
export const cellsOf = (
  pieces: readonly Footprint[],
  spots: readonly Spot[],
  grid: SheetGrid,
): readonly Cell[] =>
  neededSheets(
    pieces.map((piece, i) => placedFootprint(piece, spots[i]!)),
    grid,
  );

/** The layout as drawings, moved so that the first row and column used are the first there are. */
export const settled = (
  drawings: readonly PieceDrawing[],
  pieces: readonly Footprint[],
  { spots, cells }: { readonly spots: readonly Spot[]; readonly cells: readonly Cell[] },
  grid: SheetGrid,
  naiveSheets: number,
): Placement => {
  const { first } = cellBounds(cells);
  const corner = point(
    first.column === 0 ? 0 : first.column * grid.pitch.width,
    first.row === 0 ? 0 : -first.row * grid.pitch.height,
  );
  return {
    pieces: drawings.map((drawing, i) => {
      const spot = spots[i]!;
      return turnedDrawing(drawing, spot.turn, subtract(shiftTo(pieces[i]!, spot), corner));
    }),
    cells: cells.map((c) => ({ row: c.row - first.row, column: c.column - first.column })),
    grid,
    naiveSheets,
  };
};
