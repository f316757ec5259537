import { circle, line } from '../../geometry/path.ts';
import { add, left, type Point, point, scale, subtract, unit } from '../../geometry/point.ts';
import type { LineMark } from '../drawing.ts';

/** How far the cross of a button, and half the end bar of a buttonhole, reach (mm). */
const BEYOND = 1.5;
const HALF_BAR = 2;

/** Where a button is sewn: its circle, and a cross through the middle. */
export const buttonMarks = (at: Point, diameter: number): LineMark[] => {
  const reach = diameter / 2 + BEYOND;
  const bar = (v: Point): LineMark => ({
    kind: 'line',
    role: 'mark',
    path: [line(subtract(at, v), add(at, v))],
  });
  return [
    { kind: 'line', role: 'mark', path: circle(at, diameter / 2) },
    bar(point(reach, 0)),
    bar(point(0, reach)),
  ];
};

/** A buttonhole: its slit with a bar across each end. */
export const buttonholeMarks = (from: Point, to: Point): LineMark[] => {
  const side = scale(left(unit(subtract(to, from))), HALF_BAR);
  const bar = (p: Point): LineMark => ({
    kind: 'line',
    role: 'mark',
    path: [line(subtract(p, side), add(p, side))],
  });
  return [{ kind: 'line', role: 'mark', path: [line(from, to)] }, bar(from), bar(to)];
};
