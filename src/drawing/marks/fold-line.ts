import { type Box, boxCentre, boxOf } from '../../geometry/box.ts';
import { type Line, line, polygon } from '../../geometry/path.ts';
import { type Point, point, rotate } from '../../geometry/point.ts';
import type { LineMark, Mark, TextMark } from '../drawing.ts';
import { obstaclesOf } from '../obstacles.ts';
import { SMALLEST_TEXT } from '../roles.ts';
import { findRoom, quarterTurned, roomOf } from '../room.ts';
import { segmentsOf } from '../segment.ts';
import { textWidth } from '../text-width.ts';
import { arrowhead } from './arrowhead.ts';

const WORDS = 'place on fold';
/** How far the bracket stands inside the fold, mm, and its arrowheads. */
const DEEP = 8;
const HEAD = 3;
/** From the bracket to the words, and how much lower than their strip they are taken to be, mm. */
const BESIDE = 1.2;
const HAIR = 0.01;
const UPWARDS = Math.PI / 2;
/** The bracket leaves this share of the fold free at each end. */
const FREE = 0.16;

/**
 * The fold line of a half piece, which lies to its right: dash-dot, with a bracket whose arrows point at the fold and
 * the words beside it, as near its middle as they lie on nothing that is drawn there.
 */
export const foldMarks = (fold: Line, there: readonly Mark[]): Mark[] => {
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
    ...foldWords(boxOf([point(bracket + BESIDE, y0), point(bracket + BESIDE + SMALLEST_TEXT, y1)]), there),
  ];
};

const solid = (path: LineMark['path']): LineMark => ({ kind: 'line', role: 'mark', path });
const head = (tip: Point): LineMark => ({
  kind: 'line',
  role: 'mark',
  path: arrowhead(tip, point(-1, 0), HEAD),
  filled: true,
});

/** Along a strip beside the bracket. Where they have no room there the bracket stands alone: the label says it too. */
const foldWords = (strip: Box, there: readonly Mark[]): TextMark[] => {
  const size = SMALLEST_TEXT;
  const { min, max } = strip;
  const walls = polygon([min, point(max.x, min.y), max, point(min.x, max.y)]);
  const room = roomOf(segmentsOf(walls), obstaclesOf(there));
  // An em is free at each end.
  const block = { width: (textWidth(WORDS) + 2) * size, height: size - HAIR };
  const found = findRoom(quarterTurned(room), block, rotate(boxCentre(strip), -UPWARDS));
  if (!found) return [];
  const at = rotate(found, UPWARDS);
  return [{ kind: 'text', role: 'note', lines: [WORDS], size, at, align: 'middle', angle: UPWARDS }];
};
