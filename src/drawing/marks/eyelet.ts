import { circle, line } from '../../geometry/path.ts';
import { add, type Point, point, subtract } from '../../geometry/point.ts';
import type { LineMark } from '../drawing.ts';

/** Half of each stroke of the cross in the middle, mm: for the awl. */
const HALF_CROSS = 1;

/** Where an eyelet goes: its hole, and a small cross where the awl is set. */
export const eyeletMarks = (at: Point, diameter: number): LineMark[] => {
  const bar = (v: Point): LineMark => ({
    kind: 'line',
    role: 'mark',
    path: [line(subtract(at, v), add(at, v))],
  });
  return [
    { kind: 'line', role: 'mark', path: circle(at, diameter / 2) },
    bar(point(HALF_CROSS, 0)),
    bar(point(0, HALF_CROSS)),
  ];
};
