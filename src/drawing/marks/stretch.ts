import { pathLength, pointAt, tangentAt } from '../../geometry/measure.ts';
import { line, type Path, pathEnd, pathStart } from '../../geometry/path.ts';
import { add, dot, heading, left, type Point, scale } from '../../geometry/point.ts';
import type { LineMark, Mark } from '../drawing.ts';
import { SMALLEST_TEXT } from '../roles.ts';
import { textWidth } from '../text-width.ts';
import { beside, readingAngle } from './beside.ts';

/** Each bar stands this far to both sides of the stitch line, and the line between them this far inside it, mm. */
const BAR = 2.5;
const INSIDE = 1.6;
/** Between a name and the bar beside it, mm. */
const SIDE = 1.5;

/**
 * A stretch of an edge, such as a turning gap: a bar across each end, a line between, its name on the inside; past
 * the end that lies farther from x = 0 where the stretch is too short for its name.
 */
export const stretchMarks = (path: Path, name: string, isInside: (p: Point) => boolean): Mark[] => {
  const length = pathLength(path);
  if (!(length > 0)) return [];
  const [start, end] = [pathStart(path), pathEnd(path)];
  const long = textWidth(name) * SMALLEST_TEXT + 2 * SIDE < length;
  const endFirst = Math.abs(end.x) >= Math.abs(start.x);
  const mm = long ? length / 2 : endFirst ? length : 0;
  const [at, along] = [pointAt(path, mm), tangentAt(path, mm)];
  const inward = isInside(add(pointAt(path, length / 2), left(tangentAt(path, length / 2)))) ? 1 : -1;
  const angle = readingAngle(along);
  const reading = heading(angle);
  const toInside = scale(left(along), inward);
  const clear = INSIDE + SMALLEST_TEXT * 0.65;
  const onward = dot(along, reading) > 0 === endFirst;
  const place = add(at, scale(toInside, clear));
  return [
    bar(start, tangentAt(path, 0)),
    bar(end, tangentAt(path, length)),
    { kind: 'line', role: 'mark', path: beside(path, inward * INSIDE) },
    {
      kind: 'text',
      role: 'note',
      lines: [name],
      size: SMALLEST_TEXT,
      at: long ? place : add(place, scale(reading, onward ? SIDE : -SIDE)),
      align: long ? 'middle' : onward ? 'start' : 'end',
      angle,
    },
  ];
};

const bar = (at: Point, along: Point): LineMark => {
  const side = scale(left(along), BAR);
  return { kind: 'line', role: 'mark', path: [line(add(at, scale(side, -1)), add(at, side))] };
};
