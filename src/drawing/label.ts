import { boundsOf } from '../geometry/bounds.ts';
import { add, heading, left, type Point, scale } from '../geometry/point.ts';
import type { Allowances } from '../pattern/pattern.ts';
import type { Piece } from '../pattern/piece.ts';
import { say } from '../words.ts';
import type { Mark, TextMark } from './drawing.ts';
import type { DrawingOptions } from './drawing-options.ts';
import { labelWords } from './label-words.ts';
import { SMALLEST_TEXT } from './roles.ts';
import { roomOf } from './room.ts';
import { type Segment, segment, segmentsOf } from './segment.ts';
import { setLabel } from './set-label.ts';
import { blockSize } from './text-block.ts';

interface LabelSite {
  readonly piece: Piece;
  readonly allowances: Allowances;
  readonly options: DrawingOptions;
  readonly onFold: boolean;
  /** The stitch line, and the cut line outside it. */
  readonly walls: readonly Segment[];
  readonly silhouette: readonly Segment[];
  /** What the label must not lie on, and what it had better not. */
  readonly clear: readonly Mark[];
  readonly rather: readonly Mark[];
}

/**
 * The label of a piece: first with its notes, clear of everything or over centre lines and dimensions; then without the
 * notes, which the sewing order repeats; at last out into the seam allowance.
 */
export const labelMarks = (site: LabelSite): TextMark[] => {
  const { piece, options } = site;
  const clear = obstaclesOf(site.clear);
  const inside = [roomOf(site.walls, [...clear, ...obstaclesOf(site.rather)]), roomOf(site.walls, clear)];
  const words = labelWords(piece, site.allowances, options.label, site.onFold, options.unit);
  const notes = options.label ? piece.notes.map((note) => say(note, options.unit).replace(/\.$/, '')) : [];
  const noted = { ...words, phrases: [...words.phrases, ...notes] };
  return (
    (notes.length > 0 && setLabel(noted, inside, piece.labelAt)) ||
    setLabel(words, inside, piece.labelAt) ||
    setLabel(words, [roomOf(site.silhouette, clear)], piece.labelAt, true) ||
    smallestLabel(words.title, piece.labelAt)
  );
};

/** Where not even one line has room: the name alone, so that the piece can be told. */
const smallestLabel = (title: string, at: Point): TextMark[] => [
  { kind: 'text', role: 'label', lines: [title], size: SMALLEST_TEXT, at, align: 'middle', angle: 0 },
];

const obstaclesOf = (marks: readonly Mark[]): Segment[] =>
  marks.flatMap((mark) => (mark.kind === 'line' ? lineObstacle(mark.path) : textObstacle(mark)));

/** A line is in the way where it runs; a closed mark of some size all over. */
const lineObstacle = (path: Parameters<typeof boundsOf>[0]): Segment[] => {
  const { min, max } = boundsOf(path);
  return path.length > 2 || path[0]?.kind === 'arc'
    ? [...segmentsOf(path), segment(min, max)]
    : segmentsOf(path);
};

/** The frame of a block of text and its diagonal. */
const textObstacle = (mark: TextMark): Segment[] => {
  const { width, height } = blockSize(mark);
  const along = heading(mark.angle);
  const start = mark.align === 'start' ? 0 : mark.align === 'middle' ? -width / 2 : -width;
  const corner = (u: number, v: number): Point =>
    add(mark.at, add(scale(along, start + u * width), scale(left(along), v * height)));
  const [a, b, c, d] = [corner(0, -0.5), corner(1, -0.5), corner(1, 0.5), corner(0, 0.5)];
  return [segment(a, b), segment(b, c), segment(c, d), segment(d, a), segment(a, c)];
};
