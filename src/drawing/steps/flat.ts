import { boundsOf } from '../../geometry/bounds.ts';
import { boxHeight, boxWidth } from '../../geometry/box.ts';
import { point } from '../../geometry/point.ts';
import { cutLine } from '../../pattern/cut-line.ts';
import type { Allowances } from '../../pattern/pattern.ts';
import type { Piece } from '../../pattern/piece.ts';
import type { Mark, TextMark } from '../drawing.ts';
import { beside } from '../marks/beside.ts';
import { grainMarks } from '../marks/grain.ts';
import { SMALLEST_TEXT } from '../roles.ts';
import { textWidth } from '../text-width.ts';
import { lineMark, movedMarks } from './moved-mark.ts';
import type { Picture, Shown } from './shown.ts';
import type { Size } from './size.ts';
import { marksOnSmall, notchesOnSmall, type Small, small } from './small.ts';

const GAP = 5;
const UNDER = SMALLEST_TEXT * 1.7;
/** The largest scale, and by how much less is tried next. */
const LARGEST = 0.42;
const LESS = 0.88;
const SMALLEST = 0.05;

type Showing = Pick<Shown, 'show' | 'topstitched'>;

/** Pieces beside and below each other as they lie, drawn small in one scale, each with its name. */
export const flat = (
  pieces: readonly Piece[],
  allowances: Allowances,
  shown: Showing,
  room: Size,
): Picture => {
  // What goes into a cover is drawn in it, not beside it.
  const inside = shown.show === 'turned' ? pieces.filter(isInside) : [];
  const beside = inside.length > 0 ? pieces.filter((piece) => !isInside(piece)).slice(0, 1) : pieces;
  const whole = beside.map((piece): Sized => {
    const bounds = boundsOf(cutLine(piece, allowances).flat());
    return { name: piece.name, wide: boxWidth(bounds), tall: boxHeight(bounds) };
  });
  let k = LARGEST;
  let laid = rows(whole, k, room.width);
  while (laid.height > room.height && k > SMALLEST) {
    k *= LESS;
    laid = rows(whole, k, room.width);
  }
  const inner = inside.map((piece) => lineMark('fold', small(piece, allowances, k).stitch));
  const marks = laid.spots.flatMap(({ x, y }, i) => {
    const one = small(beside[i]!, allowances, k);
    const { min, max } = boundsOf(one.cut);
    const at = point(x + boxWidth({ min, max }) / 2, y - UNDER / 2);
    return [
      ...movedMarks([...linesOf(one, shown), ...inner], point(x - min.x, y - min.y)),
      nameMark(one.piece.name, at),
    ];
  });
  return { width: room.width, height: laid.height, marks: movedMarks(marks, point(0, laid.height)) };
};

const nameMark = (name: string, at: TextMark['at']): TextMark => ({
  kind: 'text',
  role: 'note',
  at,
  lines: [name],
  size: SMALLEST_TEXT,
  align: 'middle',
  angle: 0,
});

/** A piece's name and the size of its cut line, mm. */
interface Sized {
  readonly name: string;
  readonly wide: number;
  readonly tall: number;
}

/** Left to right and down, from y = 0 downwards; endlessly high where a piece is wider than there is room. */
const rows = (pieces: readonly Sized[], k: number, width: number) => {
  const spots: { readonly x: number; readonly y: number }[] = [];
  let [x, top, deep, widest] = [0, 0, 0, 0];
  for (const piece of pieces) {
    const [wide, tall] = [k * piece.wide, k * piece.tall];
    const taken = Math.max(wide, textWidth(piece.name) * SMALLEST_TEXT);
    if (x > 0 && x + taken > width) [x, top, deep] = [0, top - deep - 2, 0];
    spots.push({ x: x + (taken - wide) / 2, y: top - tall });
    widest = Math.max(widest, x + taken);
    x += taken + GAP;
    deep = Math.max(deep, tall + UNDER);
  }
  return { spots, height: widest > width + 0.01 ? Number.POSITIVE_INFINITY : deep - top };
};

/** A stiffener: without an allowance anywhere. The cover of a button has none either, but goes round it. */
const isInside = ({ outline }: Piece): boolean =>
  outline.every(({ kind, name }) => kind === 'none' && name !== 'edge');

/** Finished edges where a piece has been turned, cut edges where it has not. */
const linesOf = (one: Small, { show, topstitched }: Showing): readonly Mark[] => {
  if (show === 'turned') return turnedLines(one, topstitched);
  return [
    lineMark('cut', one.cut, { ground: true }),
    ...(show === 'body' ? [lineMark('fold', one.stitch)] : []),
    ...(show === 'cut' ? grainMarks(one.piece.grain) : marksOnSmall(one)),
    ...notchesOnSmall(one),
  ];
};

/** From the edge to the first line of stitches, mm. */
const FIRST_LINE = 6;

/** The edge as it is once it is turned, and a first line of stitches inside it. */
const turnedLines = ({ piece, stitch, scale }: Small, topstitched: boolean): readonly Mark[] => {
  const outer = piece.outline.find(({ name }) => name === 'outer');
  return [
    lineMark('cut', stitch, { ground: true }),
    ...(outer && topstitched ? [lineMark('sew', beside(outer.path, FIRST_LINE * scale))] : []),
  ];
};
