import type { LineMark, Mark, TextMark } from '../drawing/drawing.ts';
import { textStyles } from '../drawing/roles.ts';
import type { Box } from '../geometry/box.ts';
import { line, type Path, polygon, polyline } from '../geometry/path.ts';
import { add, left, type Point, point, scale, subtract, unit } from '../geometry/point.ts';
import { type Crowd, weightIn } from './crowd.ts';
import type { PaperSpec } from './paper.ts';
import { sheetName } from './sheet.ts';
import { type Cell, type SheetGrid, windowOf } from './sheet-grid.ts';

/** From the middle of a joining mark to its points, mm; smaller where the shared strip is. */
const HALF = 5;
/** Where along an edge the marks may stand: two, so that a sheet cannot turn about one. The first free place is taken. */
const PLACES = [
  [0.25, 0.22, 0.28, 0.19, 0.31, 0.16, 0.34, 0.13, 0.37],
  [0.75, 0.78, 0.72, 0.81, 0.69, 0.84, 0.66, 0.87, 0.63],
] as const;
/** From a mark to the neighbour's name, mm. */
const BESIDE = 1.5;

/** One edge at which a sheet meets a printed neighbour. */
interface Join {
  readonly neighbour: Cell;
  /** Along the join line, from the window's one side to the other. */
  readonly from: Point;
  readonly to: Point;
  /** A unit vector from the join line into the sheet. */
  readonly inward: Point;
  /** How far the sheet goes on beyond the join line, mm. */
  readonly beyond: number;
}

/**
 * The marks along the edges where a sheet meets others: the join line, and on it two diamonds with the neighbour's
 * name beside them, where least is drawn. A sheet shows the whole diamond where the neighbour will lie over it, else the half inside.
 */
export const joinMarks = (
  cell: Cell,
  printed: readonly Cell[],
  grid: SheetGrid,
  { join }: Pick<PaperSpec, 'join'>,
  crowd: Crowd,
): readonly Mark[] =>
  joinsOf(cell, printed, grid).flatMap((j) => marksOf(j, join === 'overlap' ? shared(grid) : HALF, crowd));

const shared = ({ window, pitch }: SheetGrid): number =>
  Number.isFinite(pitch.width) ? window.width - pitch.width : window.height - pitch.height;

/**
 * What stays in sight of a sheet when the neighbours to the right and below lie over it, drawn in by `clear` (mm)
 * along every join.
 */
export const visiblePart = (cell: Cell, printed: readonly Cell[], grid: SheetGrid, clear = 0): Box => {
  let { min, max } = windowOf(grid, cell);
  for (const { inward, beyond } of joinsOf(cell, printed, grid)) {
    const by = scale(inward, beyond + clear);
    min = point(min.x + Math.max(0, by.x), min.y + Math.max(0, by.y));
    max = point(max.x + Math.min(0, by.x), max.y + Math.min(0, by.y));
  }
  return { min, max };
};

const joinsOf = (cell: Cell, printed: readonly Cell[], grid: SheetGrid): readonly Join[] => {
  const { min, max } = windowOf(grid, cell);
  const strip = {
    width: grid.window.width - grid.pitch.width,
    height: grid.window.height - grid.pitch.height,
  };
  const right = max.x - strip.width;
  const foot = min.y + strip.height;
  const edges = [
    { by: [0, -1], from: point(min.x, max.y), to: point(min.x, min.y), inward: point(1, 0), beyond: 0 },
    {
      by: [0, 1],
      from: point(right, max.y),
      to: point(right, min.y),
      inward: point(-1, 0),
      beyond: strip.width,
    },
    { by: [-1, 0], from: point(min.x, max.y), to: max, inward: point(0, -1), beyond: 0 },
    {
      by: [1, 0],
      from: point(min.x, foot),
      to: point(max.x, foot),
      inward: point(0, 1),
      beyond: strip.height,
    },
  ] as const;
  return edges.flatMap(({ by, ...edge }) => {
    const neighbour = { row: cell.row + by[0], column: cell.column + by[1] };
    const isPrinted = printed.some((c) => c.row === neighbour.row && c.column === neighbour.column);
    return isPrinted ? [{ neighbour, ...edge }] : [];
  });
};

const marksOf = (
  { neighbour, from, to, inward, beyond }: Join,
  strip: number,
  crowd: Crowd,
): readonly Mark[] => {
  const half = Math.min(HALF, strip);
  const along = unit(subtract(to, from));
  return [
    { kind: 'line', role: 'sheet', path: [line(from, to)] },
    ...PLACES.flatMap((shares): readonly Mark[] => {
      const at = freest(
        shares.map((share) => add(from, scale(subtract(to, from), share))),
        crowd,
      );
      return [diamond(at, along, inward, half, beyond > 0), name(at, inward, half, neighbour)];
    }),
  ];
};

/**
 * The place around which least is drawn, the first of equals. What is looked at is the same from both sides of a
 * join, so that both sheets choose alike.
 */
const freest = (places: readonly Point[], crowd: Crowd): Point => {
  const weights = places.map(({ x, y }) =>
    weightIn(crowd, { min: point(x - AROUND, y - AROUND), max: point(x + AROUND, y + AROUND) }),
  );
  return places[weights.indexOf(Math.min(...weights))]!;
};
const AROUND = HALF + 6;

const diamond = (at: Point, along: Point, inward: Point, half: number, whole: boolean): LineMark => {
  const tip = (direction: Point): Point => add(at, scale(direction, half));
  const [back, front, out] = [tip(scale(along, -1)), tip(along), tip(scale(inward, -1))];
  const path: Path = whole ? polygon([back, tip(inward), front, out]) : polyline([back, tip(inward), front]);
  return { kind: 'line', role: 'join', path };
};

/** The neighbour's name stands inside the sheet: beside a mark on an upright edge, to the right of one on a level edge. */
const name = (at: Point, inward: Point, half: number, neighbour: Cell): TextMark => {
  const { size } = textStyles.sheet;
  const upright = inward.y === 0;
  const offset = upright
    ? scale(inward, half + BESIDE)
    : add(scale(left(point(0, -1)), half * 0.5 + BESIDE), scale(inward, half * 0.5 + size * 0.5));
  return {
    kind: 'text',
    role: 'sheet',
    at: add(at, offset),
    lines: [sheetName(neighbour)],
    size,
    align: upright && inward.x < 0 ? 'end' : 'start',
    angle: 0,
  };
};
