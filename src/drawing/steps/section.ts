import { line, type Path, polyline } from '../../geometry/path.ts';
import { point } from '../../geometry/point.ts';
import type { LineMark, Mark, TextMark } from '../drawing.ts';
import { SMALLEST_TEXT } from '../roles.ts';
import { lineMark } from './moved-mark.ts';
import type { Picture } from './shown.ts';

/** Half of what is seen of each piece, and the allowance, mm on paper. */
const HALF = 22;
const ALLOWANCE = 8;
const LIFT = 1.5;
const LOW = 6;

/**
 * A seam seen from its end once it is pressed: both pieces level, right side up, their allowances below, apart or to
 * one side, and the topstitching through them. mm on paper.
 */
export const section = (
  left: string,
  right: string,
  press: 'open' | 'left' | 'right',
  topstitched: boolean,
  words: string,
): Picture => {
  const at = LOW + 4;
  const middle = HALF;
  const turn = (way: -1 | 1, depth: number): Path =>
    polyline([
      point(middle, at),
      point(middle + way * 0.8, at - depth),
      point(middle + way * ALLOWANCE, at - depth),
    ]);
  const toLeft = press === 'right' ? turn(1, 2 * LIFT) : turn(-1, LIFT);
  const toRight = press === 'left' ? turn(-1, 2 * LIFT) : turn(1, LIFT);
  const sides = press === 'open' ? ([-1, 1] as const) : press === 'left' ? ([-1] as const) : ([1] as const);
  const marks: Mark[] = [
    lineMark('cut', [line(point(0, at), point(middle, at))]),
    lineMark('cut', [line(point(middle, at), point(2 * HALF, at))], { tone: 'chalk' }),
    lineMark('cut', toLeft),
    lineMark('cut', toRight, { tone: 'chalk' }),
    ...(topstitched ? sides.map((way) => stitches(middle + way * 3, at)) : []),
    ...[label(left, HALF * 0.42, at + 3), label(right, HALF * 1.58, at + 3)].filter(
      ({ lines }) => lines[0] !== '',
    ),
    label(words, HALF, 2),
  ];
  return { width: 2 * HALF, height: at + 6, marks };
};

/** How high a layer is seen above the lower edge, mm on paper. */
const TALL = 20;

/**
 * The lower edge seen from its end: what is inside turned in, the allowances between the layers, and the row of stitches
 * through all of them; a brim stands out from it. mm on paper.
 */
export const hem = (topstitched: boolean, brimmed: boolean): Picture => {
  const [x, y] = [HALF / 2, 4];
  const inside: Path = polyline([
    point(x, y),
    point(x + 2 * LIFT, y),
    point(x + 2 * LIFT, y + TALL * 0.7),
    point(x + 3 * LIFT, y + TALL * 0.7),
    point(x + 3 * LIFT, y + TALL * 0.7 - 3),
  ]);
  return {
    width: HALF * 1.5,
    height: y + TALL + 5,
    marks: [
      lineMark('cut', [line(point(x, y), point(x, y + TALL))]),
      lineMark('cut', inside, { tone: 'chalk' }),
      ...(brimmed ? [lineMark('cut', [line(point(x, y), point(x - 9, y - 1.5))])] : []),
      lineMark('cut', [line(point(x + LIFT, y), point(x + LIFT, y + ALLOWANCE))]),
      ...(topstitched
        ? [lineMark('sew', [line(point(x - 1.6, y + 3), point(x + 2 * LIFT + 1.6, y + 3))])]
        : []),
      label('outside', x - 6, y + TALL + 2),
      label('inside', x + 9, y + TALL + 2),
      label('lower edge', x + LIFT, 1),
    ],
  };
};

const stitches = (x: number, at: number): LineMark =>
  lineMark('sew', [line(point(x, at + 1.6), point(x, at - 2 * LIFT - 1))]);

const label = (text: string, x: number, y: number): TextMark => ({
  kind: 'text',
  role: 'note',
  at: point(x, y),
  lines: [text],
  size: SMALLEST_TEXT,
  align: 'middle',
  angle: 0,
});
