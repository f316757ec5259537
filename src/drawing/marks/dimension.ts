import { pathLength, pointAt, stretch, tangentAt } from '../../geometry/measure.ts';
import { line, type Path, pathEnd, pathStart } from '../../geometry/path.ts';
import { add, heading, left, type Point, scale } from '../../geometry/point.ts';
import type { Dimension } from '../../pattern/piece.ts';
import { formatLength, type Unit } from '../../units.ts';
import type { LineMark, Mark } from '../drawing.ts';
import { textStyles } from '../roles.ts';
import { textWidth } from '../text-width.ts';
import { arrowhead } from './arrowhead.ts';
import { beside, readingAngle } from './beside.ts';

const HEAD = 2.6;
const TICK = 1.4;

/**
 * A dimension line with its figure within it where there is room, drawn a distance (mm) to the left of what it measures. `half`
 * where only half of a symmetric distance is on the piece: the figure is that of the whole, and says so.
 */
export const dimensionMarks = (
  { along, mm }: Dimension,
  unit: Unit,
  aside: number,
  half: boolean,
): Mark[] => {
  const path = aside === 0 ? along : beside(along, aside);
  const length = pathLength(path);
  // Nothing to measure? A piece can shrink to where a dimension vanishes.
  if (!(length > 0.5)) return [];
  const figure = formatLength(mm ?? pathLength(along), unit) + (half ? ' whole' : '');
  const { size } = textStyles.dimension;
  const gap = (textWidth(figure) + 0.7) * size;
  // A long line carries its figure off the middle, where centre lines cross.
  const foot = length > 4 * gap ? length * 0.22 : length / 2;
  const middle = pointAt(path, foot);
  const angle = readingAngle(tangentAt(path, foot));
  // Is there room for the figure within the line? Else it stands above.
  const inLine = gap + 4 * HEAD < length;
  const lines = inLine ? [stretch(path, 0, foot - gap / 2), stretch(path, foot + gap / 2, length)] : [path];
  const at = inLine ? middle : add(middle, scale(left(heading(angle)), size * 0.75));
  return [
    ...lines.map((part): LineMark => ({ kind: 'line', role: 'dimension', path: part })),
    ...endMarks(path, length),
    { kind: 'text', role: 'dimension', at, lines: [figure], size, align: 'middle', angle },
  ];
};

const endMarks = (path: Path, length: number): LineMark[] => {
  const head = Math.min(HEAD, length / 3);
  const end = (at: Point, out: Point): LineMark[] => [
    { kind: 'line', role: 'dimension', path: arrowhead(at, out, head), filled: true },
    { kind: 'line', role: 'dimension', path: tickAt(at, left(out)) },
  ];
  return [
    ...end(pathStart(path), scale(tangentAt(path, 0), -1)),
    ...end(pathEnd(path), tangentAt(path, length)),
  ];
};

const tickAt = (at: Point, side: Point): Path => [
  line(add(at, scale(side, -TICK)), add(at, scale(side, TICK))),
];
