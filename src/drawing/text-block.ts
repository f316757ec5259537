import { add, heading, left, type Point, scale } from '../geometry/point.ts';
import type { TextMark } from './drawing.ts';
import { LEADING, textStyles } from './roles.ts';
import { textWidth } from './text-width.ts';

/** Height of a capital, in ems: a line looks centred when the middle of its capitals is. */
const CAPITAL = 0.66;

export interface PlacedLine {
  readonly text: string;
  /** Where the line's start, middle or end stands on its baseline, as the mark's `align` says. */
  readonly at: Point;
}

/** A text mark's lines, each on its baseline: the same for every output. */
export const placedLines = (mark: TextMark): PlacedLine[] => {
  const down = scale(left(heading(mark.angle)), -1);
  return mark.lines.map((text, i) => {
    const ems = (i - (mark.lines.length - 1) / 2) * LEADING + CAPITAL / 2;
    return { text, at: add(mark.at, scale(down, ems * mark.size)) };
  });
};

/** The rectangle a block of text fills, mm, before it is turned. */
export const blockSize = (
  mark: Pick<TextMark, 'lines' | 'size' | 'role'>,
): { width: number; height: number } => {
  const { bold } = textStyles[mark.role];
  return {
    width: Math.max(0, ...mark.lines.map((l) => textWidth(l, bold))) * mark.size,
    height: ((mark.lines.length - 1) * LEADING + 1) * mark.size,
  };
};
