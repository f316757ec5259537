import type { Box } from '../../geometry/box.ts';
import { clipToBox } from '../../geometry/clip.ts';
import { flatten } from '../../geometry/flatten.ts';
import { polygon } from '../../geometry/path.ts';
import { between, type Point } from '../../geometry/point.ts';
import type { LineMark } from '../drawing.ts';

/** Chords this near to a curve look like it, mm on paper. */
const FINE = 0.05;

/** What a window shows of some lines. Where a shape that hides others is cut off, its own edge is left open. */
export const throughWindow = (marks: readonly LineMark[], box: Box): readonly LineMark[] =>
  marks.flatMap((mark): readonly LineMark[] => {
    const open = clipToBox(mark.path, box).map((path): LineMark => {
      const { ground: _, ...line } = mark;
      return { ...line, path };
    });
    if (!mark.ground && !mark.filled) return open;
    const corners = cutToBox(flatten(mark.path, FINE).slice(0, -1), box);
    if (corners.length < 3) return [];
    if (mark.filled) return [{ ...mark, path: polygon(corners) }];
    return [{ ...mark, role: 'bare', path: polygon(corners) }, ...open];
  });

/** What is left of a polygon inside a box, side by side of it (Sutherland and Hodgman 1974). */
const cutToBox = (corners: readonly Point[], { min, max }: Box): readonly Point[] => {
  const depths: readonly ((p: Point) => number)[] = [
    (p) => p.x - min.x,
    (p) => max.x - p.x,
    (p) => p.y - min.y,
    (p) => max.y - p.y,
  ];
  return depths.reduce(
    (kept, depth) =>
      kept.flatMap((p, i) => {
        const before = kept[(i || kept.length) - 1]!;
        const [d0, d1] = [depth(before), depth(p)];
        const crossing = d0 < 0 !== d1 < 0 ? [between(before, p, d0 / (d0 - d1))] : [];
        return d1 < 0 ? crossing : [...crossing, p];
      }),
    corners,
  );
};
