import type { LineMark } from '../drawing/drawing.ts';
import type { Box } from '../geometry/box.ts';
import { clipToBox, polygonInBox } from '../geometry/clip.ts';
import { flatten } from '../geometry/flatten.ts';
import { type Path, polygon } from '../geometry/path.ts';
import { distance, type Point } from '../geometry/point.ts';
import { OFFSET, SAME_POINT } from '../geometry/tolerance.ts';

/** The parts of a line inside a box, curves kept as curves. A filled shape stays closed along the box's edge. */
export const clippedLine = (mark: LineMark, box: Box): readonly LineMark[] => {
  const paths = mark.filled ? clippedShape(mark.path, box) : clipToBox(mark.path, box);
  return paths.map((path) => ({ ...mark, path }));
};

/** A filled shape is cut with the curves in it as chords. */
const clippedShape = (path: Path, box: Box): readonly Path[] => {
  const whole = clipToBox(path, box);
  // Inside altogether, or outside?
  if (whole.length === 0 || whole[0] === path || whole[0]?.length === path.length) return whole;
  const corners = clippedRing(flatten(path, OFFSET).slice(0, -1), box);
  return corners.length > 2 ? [polygon(corners)] : [];
};

/** The corners, no two of them the same point, of what lies inside a box of a closed shape, itself given by its corners. */
export const clippedRing = (ring: readonly Point[], box: Box): readonly Point[] =>
  polygonInBox(ring, box).filter((p, i, all) => distance(p, all[(i || all.length) - 1]!) > SAME_POINT);
