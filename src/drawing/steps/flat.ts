import { boundsOf } from '../../geometry/bounds.ts';
import { boxHeight, boxWidth } from '../../geometry/box.ts';
import { line } from '../../geometry/path.ts';
import { point } from '../../geometry/point.ts';
import { cutLine } from '../../pattern/cut-line.ts';
import type { Allowances } from '../../pattern/pattern.ts';
import type { Piece } from '../../pattern/piece.ts';
import type { Mark, TextMark } from '../drawing.ts';
import { arrowhead } from '../marks/arrowhead.ts';
import { grainMarks } from '../marks/grain.ts';
import { notchesOf } from '../marks-of.ts';
import { SMALLEST_TEXT } from '../roles.ts';
import { textWidth } from '../text-width.ts';
import { lineMark, movedMarks } from './moved-mark.ts';
import type { Picture, Shown } from './shown.ts';
import type { Size } from './size.ts';
import { marksOnSmall, rowsOnSmall, type Small, small } from './small.ts';

const GAP = 5;
const UNDER = SMALLEST_TEXT * 1.7;
/** The largest scale, and by how much less is tried next. */
const LARGEST = 0.42;
const LESS = 0.88;
const SMALLEST = 0.05;

type Showing = Pick<Shown, 'show' | 'rows'>;

/** Pieces beside and below each other as they lie, drawn small in one scale, each with its name. */
export const flat = (
  pieces: readonly Piece[],
  allowances: Allowances,
  shown: Showing,
  room: Size,
): Picture => {
  // What goes into a cover is drawn on its way into it, not beside it.
  const inside = shown.show === 'turned' ? pieces.filter(isInside) : [];
  const beside = inside.length > 0 ? pieces.filter((piece) => !isInside(piece)).slice(0, 1) : pieces;
  const whole = beside.map((piece): Sized => {
    const bounds = boundsOf(cutLine(piece, allowances).flat());
    const tall = boxHeight(bounds);
    return { name: piece.name, wide: boxWidth(bounds), tall: inside.length > 0 ? tall * (1 + OUT) : tall };
  });
  let k = LARGEST;
  let laid = rows(whole, k, room.width);
  while (laid.height > room.height && k > SMALLEST) {
    k *= LESS;
    laid = rows(whole, k, room.width);
  }
  const inner = inside.flatMap((piece) => slippedIn(small(piece, allowances, k)));
  const marks = laid.spots.flatMap(({ x, y }, i) => {
    const one = small(beside[i]!, allowances, k);
    const { min, max } = boundsOf(one.cut);
    const at = point(x + boxWidth({ min, max }) / 2, y - UNDER / 2);
    return [
      ...movedMarks([...inner, ...linesOf(one, shown)], point(x - min.x, y - min.y)),
      nameMark(one.piece.name, at),
    ];
  });
  return { width: room.width, height: laid.height, marks: movedMarks(marks, point(0, laid.height)) };
};

/** How far out of its cover a stiffener is drawn, a part of its height. */
const OUT = 0.45;

/** A stiffener on its way into its cover, and an arrow for the way. */
const slippedIn = ({ stitch }: Small): readonly Mark[] => {
  const { min, max } = boundsOf(stitch);
  const [middle, by] = [(min.x + max.x) / 2, OUT * (max.y - min.y)];
  // Between its horns, above the lowest place of its inner edge.
  const [from, to] = [point(middle, max.y + by), point(middle, max.y)];
  return [
    ...movedMarks([lineMark('mark', stitch, { tone: 'chalk' })], point(0, by)),
    lineMark('mark', [line(from, to)], { tone: 'chalk' }),
    lineMark('mark', arrowhead(to, point(0, -1), 2.4), { filled: true, tone: 'chalk' }),
  ];
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

/** Left to right and down, from y = 0 downwards, each row in the middle; endlessly high where a piece is wider than there is room. */
const rows = (pieces: readonly Sized[], k: number, width: number) => {
  const spots: { readonly x: number; readonly y: number }[] = [];
  let [x, top, deep, first] = [0, 0, 0, 0];
  let fits = true;
  const closeRow = () => {
    const aside = (width - (x - GAP)) / 2;
    fits &&= aside > -0.01;
    for (let i = first; i < spots.length; i++) spots[i] = { x: spots[i]!.x + aside, y: spots[i]!.y };
    first = spots.length;
  };
  for (const piece of pieces) {
    const [wide, tall] = [k * piece.wide, k * piece.tall];
    const taken = Math.max(wide, textWidth(piece.name) * SMALLEST_TEXT);
    if (x > 0 && x + taken > width) {
      closeRow();
      [x, top, deep] = [0, top - deep - 2, 0];
    }
    spots.push({ x: x + (taken - wide) / 2, y: top - tall });
    x += taken + GAP;
    deep = Math.max(deep, tall + UNDER);
  }
  closeRow();
  return { spots, height: fits ? deep - top : Number.POSITIVE_INFINITY };
};

/** A stiffener: without an allowance anywhere. The cover of a button has none either, but goes round it. */
const isInside = ({ outline }: Piece): boolean =>
  outline.every(({ kind, name }) => kind === 'none' && name !== 'edge');

/** Finished edges where a piece has been turned, cut edges where it has not; and what is sewn on it. */
const linesOf = (one: Small, { show, rows: sewn }: Showing): readonly Mark[] => {
  const stitched = rowsOnSmall(one, sewn);
  if (show === 'turned') return [lineMark('cut', one.stitch, { ground: true }), ...stitched];
  return [
    lineMark('cut', one.cut, { ground: true }),
    ...(show === 'body' ? [lineMark('fold', one.stitch)] : []),
    ...(show === 'cut' ? grainMarks(one.piece.grain) : marksOnSmall(one)),
    ...stitched,
    ...notchesOf(one.piece, one.allowances),
  ];
};
