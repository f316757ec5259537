import type { LineMark, Mark, TextMark } from '../drawing/drawing.ts';
import { textStyles } from '../drawing/roles.ts';
import { type Box, boxGrown } from '../geometry/box.ts';
import { line, type Path, polygon, polyline } from '../geometry/path.ts';
import { add, between, type Point, point, scale, subtract, unit } from '../geometry/point.ts';
import { type Clutter, weightIn } from './clutter.ts';
import type { PaperSpec } from './paper.ts';
import { sheetName } from './sheet.ts';
import { type Cell, type SheetGrid, windowOf } from './sheet-grid.ts';
import { textBox } from './text-box.ts';

/** From the middle of a joining mark to its points, mm; smaller where the shared strip is. */
const HALF = 5;
/** Where along an edge the marks stand, as shares of it: two, so that a sheet cannot turn about one. */
const PLACES = [0.25, 0.75];
/** How many steps either may give way to what is drawn there, to this side and that, and a step. */
const STEPS = 13;
const STEP = 0.01;
/** From a mark to the neighbour's name, mm. */
const BESIDE = 1.5;

/** One edge at which a sheet meets a printed neighbour. */
interface Join {
  readonly cell: Cell;
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
  clutter: Clutter,
): readonly Mark[] =>
  joinsOf(cell, printed, grid).flatMap((j) => marksOf(j, join === 'overlap' ? shared(grid) : HALF, clutter));

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
    return isPrinted ? [{ cell, neighbour, ...edge }] : [];
  });
};

const marksOf = (join: Join, strip: number, clutter: Clutter): readonly Mark[] => {
  const { neighbour, from, to, inward, beyond } = join;
  const half = Math.min(HALF, strip);
  const along = unit(subtract(to, from));
  return [
    { kind: 'line', role: 'sheet', path: [line(from, to)] },
    ...PLACES.flatMap((share): readonly Mark[] => {
      const at = freest(join, share, half, clutter);
      return [diamond(at, along, inward, half, beyond > 0), name(at, inward, half, neighbour, clutter).mark];
    }),
  ];
};

/** A name that lies on something cannot be read, a diamond can: its cells weigh as many times as much. */
const READ = 10;

/**
 * The place near a share of the join where least is under the diamond and the two names, of equals the one nearest to
 * it. What is looked at is the same from both sides, so that both sheets choose alike.
 */
const freest = (
  { cell, neighbour, from, to, inward }: Join,
  share: number,
  half: number,
  clutter: Clutter,
): Point => {
  const places = SHIFTS.map((shift) => between(from, to, share + shift));
  const weights = places.map((at) => {
    const here = name(at, inward, half, neighbour, clutter);
    const there = name(at, scale(inward, -1), half, cell, clutter);
    return READ * (here.weight + there.weight) + weightIn(clutter, boxGrown({ min: at, max: at }, half));
  });
  return places[weights.indexOf(Math.min(...weights))]!;
};

/** From the wished share of a join outwards, to either side by turns. */
const SHIFTS = Array.from({ length: 1 + 2 * STEPS }, (_, i) => (i % 2 ? -1 : 1) * Math.ceil(i / 2) * STEP);

const diamond = (at: Point, along: Point, inward: Point, half: number, whole: boolean): LineMark => {
  const tip = (direction: Point): Point => add(at, scale(direction, half));
  const [back, front, out] = [tip(scale(along, -1)), tip(along), tip(scale(inward, -1))];
  const path: Path = whole ? polygon([back, tip(inward), front, out]) : polyline([back, tip(inward), front]);
  return { kind: 'line', role: 'join', path };
};

/** A neighbour's name beside a mark, inside the sheet, where it lies on least, and how much that is. */
const name = (
  at: Point,
  inward: Point,
  half: number,
  neighbour: Cell,
  clutter: Clutter,
): { readonly mark: TextMark; readonly weight: number } => {
  const { size } = textStyles.sheet;
  const ways = standsOf(inward, half, size).map(({ by, align }) => {
    const lines = [sheetName(neighbour)];
    const mark: TextMark = { kind: 'text', role: 'sheet', at: add(at, by), lines, size, align, angle: 0 };
    return { mark, weight: weightIn(clutter, textBox(mark)) };
  });
  return ways.reduce((best, way) => (way.weight < best.weight ? way : best));
};

/** On an upright edge beyond the mark's tip, or below or above it; on a level edge to the right of it, to the left, or beyond its tip. */
const standsOf = (
  inward: Point,
  half: number,
  size: number,
): readonly { readonly by: Point; readonly align: TextMark['align'] }[] => {
  if (inward.y !== 0) {
    const [x, y] = [half / 2 + BESIDE, inward.y * (half / 2 + size / 2)];
    return [
      { by: point(x, y), align: 'start' },
      { by: point(-x, y), align: 'end' },
      { by: scale(inward, half + BESIDE / 2 + size / 2), align: 'middle' },
    ];
  }
  const [x, y] = [inward.x * BESIDE, half + size / 2];
  const align = inward.x < 0 ? 'end' : 'start';
  return [point(inward.x * half + x, 0), point(x, -y), point(x, y)].map((by) => ({ by, align }));
};
