import { pathLength, pointAt, tangentAt } from '../../geometry/measure.ts';
import { line, type Path, pathEnd, pathStart } from '../../geometry/path.ts';
import { add, heading, left, type Point, scale } from '../../geometry/point.ts';
import type { Dimension } from '../../pattern/piece.ts';
import { formatLength, type Unit } from '../../units.ts';
import type { LineMark, Mark } from '../drawing.ts';
import { textStyles } from '../roles.ts';
import { arrowhead } from './arrowhead.ts';
import { beside, readingAngle } from './beside.ts';

/** A dimension of an edge is drawn this far inside it, mm. */
const INSIDE = 5;
const HEAD = 2.6;
const TICK = 1.4;

/**
 * A dimension line with its figure above the middle. `inside` where it runs along the outline and is drawn beside it;
 * `half` where only the right half of a symmetric distance is on the piece: the figure is that of the whole.
 */
export const dimensionMarks = (
  { along, mm }: Dimension,
  unit: Unit,
  place: { readonly inside: boolean; readonly half: boolean },
): Mark[] => {
  const path = place.inside ? beside(along, INSIDE) : along;
  const length = pathLength(path);
  // Nothing to measure? A piece can shrink to where a dimension vanishes.
  if (!(length > 0.5)) return [];
  const figure = formatLength(mm ?? pathLength(along), unit) + (place.half ? ' whole' : '');
  const middle = tangentAt(path, length / 2);
  const angle = readingAngle(middle);
  const { size } = textStyles.dimension;
  const at = add(pointAt(path, length / 2), scale(left(heading(angle)), size * 0.75));
  return [
    { kind: 'line', role: 'dimension', path },
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

const tickAt = (at: Point, side: Point): Path => [line(add(at, scale(side, -TICK)), add(at, scale(side, TICK)))];
