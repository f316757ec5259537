import { boundsOf } from '../geometry/bounds.ts';
import { add, heading, left, type Point, scale } from '../geometry/point.ts';
import type { LineMark, LineRole, Mark, TextMark } from './drawing.ts';
import { type Segment, segment, segmentsOf } from './segment.ts';
import { blockSize } from './text-block.ts';

/** What some marks leave no room on: lines where they run, closed marks and texts all over. */
export const obstaclesOf = (marks: readonly Mark[]): Segment[] =>
  marks.flatMap((mark) => (mark.kind === 'line' ? lineObstacle(mark) : textObstacle(mark)));

/** What runs along or about a whole piece, which there is room inside of. */
const OUTLINES: ReadonlySet<LineRole> = new Set(['cut', 'stitch', 'row']);

/** A line is in the way where it runs; a closed mark of some size all over. */
const lineObstacle = ({ role, path }: LineMark): Segment[] => {
  const { min, max } = boundsOf(path);
  return !OUTLINES.has(role) && (path.length > 2 || path[0]?.kind === 'arc')
    ? [...segmentsOf(path), segment(min, max)]
    : segmentsOf(path);
};

/** No block that has to find room is lower or narrower than this, mm. */
const THINNEST = 3;

/** The frame of a block of text, and lines across it so close that nothing finds room between them. */
const textObstacle = (mark: TextMark): Segment[] => {
  const { width, height } = blockSize(mark);
  const along = heading(mark.angle);
  const start = mark.align === 'start' ? 0 : mark.align === 'middle' ? -width / 2 : -width;
  const corner = (u: number, v: number): Point =>
    add(mark.at, add(scale(along, start + u * width), scale(left(along), v * height)));
  const side = (u: number): Segment => segment(corner(u, -0.5), corner(u, 0.5));
  const steps = Math.max(1, Math.ceil(height / THINNEST));
  const lines = Array.from({ length: steps + 1 }, (_, i) => i / steps - 0.5);
  return [side(0), side(1), ...lines.map((v) => segment(corner(0, v), corner(1, v)))];
};
