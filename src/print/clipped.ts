import type { LineMark } from '../drawing/drawing.ts';
import type { Box } from '../geometry/box.ts';
import { clipToBox } from '../geometry/clip.ts';
import { flatten } from '../geometry/flatten.ts';
import { type Path, polygon } from '../geometry/path.ts';
import { between, distance, type Point } from '../geometry/point.ts';
import { OFFSET, SAME_POINT } from '../geometry/tolerance.ts';

/** The parts of a line inside a box, curves kept as curves. A filled shape stays closed along the box's edge. */
export const clippedLine = (mark: LineMark, box: Box): readonly LineMark[] => {
  const paths = mark.filled ? clippedShape(mark.path, box) : clipToBox(mark.path, box);
  return paths.map((path) => ({ ...mark, path }));
};

/** A filled shape is cut side by side of the box (Sutherland and Hodgman 1974); curves in it become chords. */
const clippedShape = (path: Path, box: Box): readonly Path[] => {
  const whole = clipToBox(path, box);
  // Inside altogether, or outside?
  if (whole.length === 0 || whole[0] === path || whole[0]?.length === path.length) return whole;
  const corners = clippedRing(flatten(path, OFFSET).slice(0, -1), box);
  return corners.length > 2 ? [polygon(corners)] : [];
};

/** The corners of what lies inside a box of a closed shape, itself given by its corners; none where nothing does. */
export const clippedRing = (ring: readonly Point[], { min, max }: Box): readonly Point[] => {
  const sides: readonly ((p: Point) => number)[] = [
    (p) => p.x - min.x,
    (p) => max.x - p.x,
    (p) => p.y - min.y,
    (p) => max.y - p.y,
  ];
  return sides.reduce(cutBy, ring);
};

/** What is left of a polygon where a distance is not negative. */
const cutBy = (corners: readonly Point[], depth: (p: Point) => number): readonly Point[] =>
  corners
    .flatMap((p, i) => {
      const before = corners[(i || corners.length) - 1]!;
      const [d0, d1] = [depth(before), depth(p)];
      const crossing = d0 < 0 !== d1 < 0 ? [between(before, p, d0 / (d0 - d1))] : [];
      return d1 < 0 ? crossing : [...crossing, p];
    })
    .filter((p, i, all) => distance(p, all[(i || all.length) - 1]!) > SAME_POINT || all.length === 1);
