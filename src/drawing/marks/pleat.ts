import { type Line, line } from '../../geometry/path.ts';
import { between, distance, subtract, unit } from '../../geometry/point.ts';
import type { LineMark } from '../drawing.ts';
import { arrowhead } from './arrowhead.ts';

const HEAD = 3;
/** Where along the lines the arrow stands, a share of their length from the edge. */
const UP = 0.7;

/** A pleat: its fold as a fold is drawn, the line that the fold is laid on, and an arrow from the one to the other. */
export const pleatMarks = (fold: Line, place: Line): LineMark[] => {
  const lines: LineMark[] = [
    { kind: 'line', role: 'fold', path: [fold] },
    { kind: 'line', role: 'mark', path: [place] },
  ];
  const [from, to] = [between(fold.from, fold.to, UP), between(place.from, place.to, UP)];
  const length = distance(from, to);
  // Do the lines coincide? Then nothing is folded.
  if (!(length > 0)) return lines;
  return [
    ...lines,
    { kind: 'line', role: 'mark', path: [line(from, to)] },
    {
      kind: 'line',
      role: 'mark',
      path: arrowhead(to, unit(subtract(to, from)), Math.min(HEAD, length / 2)),
      filled: true,
    },
  ];
};
