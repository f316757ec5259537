import type { TextMark } from '../drawing/drawing.ts';
import { blockSize } from '../drawing/text-block.ts';
import { type Box, boxOf } from '../geometry/box.ts';
import { add, type Point, point, rotate } from '../geometry/point.ts';

/** The corners of the block that a text fills, mm. */
export const textCorners = (mark: TextMark): readonly Point[] => {
  const { width, height } = blockSize(mark);
  const left = mark.align === 'start' ? 0 : mark.align === 'end' ? -width : -width / 2;
  const [x0, x1, y0, y1] = [left, left + width, -height / 2, height / 2];
  return [point(x0, y0), point(x1, y0), point(x1, y1), point(x0, y1)].map((p) =>
    add(mark.at, rotate(p, mark.angle)),
  );
};

/** The smallest upright box around a text, mm. */
export const textBox = (mark: TextMark): Box => boxOf(textCorners(mark));
