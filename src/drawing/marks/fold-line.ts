import { type Line, line } from '../../geometry/path.ts';
import { type Point, point } from '../../geometry/point.ts';
import type { LineMark, Mark, TextMark } from '../drawing.ts';
import { SMALLEST_TEXT } from '../roles.ts';
import { textWidth } from '../text-width.ts';
import { arrowhead } from './arrowhead.ts';

const WORDS = 'place on fold';
/** How far the bracket stands inside the fold, mm, and its arrowheads. */
const DEEP = 8;
const HEAD = 3;
/** The bracket leaves this share of the fold free at each end. */
const FREE = 0.16;

/**
 * The fold line of a half piece, which lies to its right: dash-dot, with a bracket whose arrows point at the fold and
 * the words beside it where the fold is long enough.
 */
export const foldMarks = (fold: Line): Mark[] => {
  const [low, high] = [Math.min(fold.from.y, fold.to.y), Math.max(fold.from.y, fold.to.y)];
  const tall = high - low;
  const [y0, y1] = [low + FREE * tall, high - FREE * tall];
  const bracket = DEEP - (tall < 20 ? 3 : 0);
  return [
    { kind: 'line', role: 'fold', path: [fold] },
    solid([
      line(point(0, y0), point(bracket, y0)),
      line(point(bracket, y0), point(bracket, y1)),
      line(point(bracket, y1), point(0, y1)),
    ]),
    head(point(0, y0)),
    head(point(0, y1)),
    ...foldWords(point(bracket + 1.2, (y0 + y1) / 2), y1 - y0),
  ];
};

const solid = (path: LineMark['path']): LineMark => ({ kind: 'line', role: 'mark', path });
const head = (tip: Point): LineMark => ({
  kind: 'line',
  role: 'mark',
  path: arrowhead(tip, point(-1, 0), HEAD),
  filled: true,
});

/** Beside a fold too short for them the bracket stands alone: the label says it too. */
const foldWords = (beside: Point, tall: number): TextMark[] => {
  const size = SMALLEST_TEXT;
  if ((textWidth(WORDS) + 2) * size > tall) return [];
  const at = point(beside.x + size / 2, beside.y);
  return [{ kind: 'text', role: 'note', lines: [WORDS], size, at, align: 'middle', angle: Math.PI / 2 }];
};
