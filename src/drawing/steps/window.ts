import type { Box } from '../../geometry/box.ts';
import { clipToBox, polygonInBox } from '../../geometry/clip.ts';
import { flatten } from '../../geometry/flatten.ts';
import { polygon } from '../../geometry/path.ts';
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
    const corners = polygonInBox(flatten(mark.path, FINE).slice(0, -1), box);
    if (corners.length < 3) return [];
    if (mark.filled) return [{ ...mark, path: polygon(corners) }];
    return [{ ...mark, role: 'bare', path: polygon(corners) }, ...open];
  });
