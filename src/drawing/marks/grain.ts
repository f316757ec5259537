import { line } from '../../geometry/path.ts';
import { distance, type Point, scale, subtract, unit } from '../../geometry/point.ts';
import type { LineMark } from '../drawing.ts';
import { arrowhead } from './arrowhead.ts';

const HEAD = 5;

/** The grain line with an arrowhead at both ends. */
export const grainMarks = ([from, to]: readonly [Point, Point]): LineMark[] => {
  const length = distance(from, to);
  // Is there a direction at all?
  if (!(length > 0)) return [];
  const along = unit(subtract(to, from));
  const head = Math.min(HEAD, length / 3);
  return [
    { kind: 'line', role: 'grain', path: [line(from, to)] },
    { kind: 'line', role: 'grain', path: arrowhead(to, along, head), filled: true },
    { kind: 'line', role: 'grain', path: arrowhead(from, scale(along, -1), head), filled: true },
  ];
};
