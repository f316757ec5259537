import { pathLength, pointAt, tangentAt } from '../../geometry/measure.ts';
import { isClosed, line, type Path, polygon } from '../../geometry/path.ts';
import { add, between, left, type Point, scale } from '../../geometry/point.ts';
import type { LineMark } from '../drawing.ts';

/** Tallest triangle, mm: a quarter inch, common practice. */
const TALL = 6.35;
/** Half the base of the tallest triangle, mm. */
const HALF_BASE = 2;
/** From the middle of a double notch to each of its triangles, mm. */
const APART = 3;
/** How far a notch goes into a piece that has no allowance to carry it, mm. */
const TICK = 4;

/**
 * A notch on an edge (mm along it): outward triangles whose tips touch the cut line, one or two. In an allowance wider
 * than the triangle is tall a line joins it to the stitch line; without allowance a short tick goes inward.
 */
export const notchMarks = (edge: Path, at: number, count: 1 | 2, allowance: number): LineMark[] =>
  (count === 1 ? [0] : [-APART, APART]).flatMap((shift) => oneNotch(footOf(edge, at, shift), allowance));

interface Foot {
  readonly at: Point;
  readonly along: Point;
}

/** A place a little beside a notch: along the edge, round again on a closed one, straight on where an open one has ended. */
const footOf = (edge: Path, at: number, shift: number): Foot => {
  const length = pathLength(edge);
  const mm = isClosed(edge) ? (at + shift + length) % length : at + shift;
  const reached = Math.min(Math.max(mm, 0), length);
  const along = tangentAt(edge, reached);
  return { at: add(pointAt(edge, reached), scale(along, mm - reached)), along };
};

const oneNotch = ({ at, along }: Foot, allowance: number): LineMark[] => {
  const out = scale(left(along), -1);
  // Nothing outside the stitch line to stand on?
  if (!(allowance > 0))
    return [{ kind: 'line', role: 'notch', path: [line(at, add(at, scale(out, -TICK)))] }];
  const tall = Math.min(TALL, allowance);
  const base = add(at, scale(out, allowance - tall));
  const half = scale(along, HALF_BASE * Math.min(1, 0.4 + (0.6 * tall) / TALL));
  const tip = add(at, scale(out, allowance));
  const triangle = polygon([between(base, add(base, half), -1), add(base, half), tip]);
  const stem: LineMark[] = tall < allowance ? [{ kind: 'line', role: 'notch', path: [line(at, base)] }] : [];
  return [...stem, { kind: 'line', role: 'notch', path: triangle, filled: true }];
};
