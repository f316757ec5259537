import { textWidth } from '../drawing/text-width.ts';

/** The size at which lines of text run no wider than a room, and no larger than `most`; mm. */
export const fittedSize = (lines: readonly string[], most: number, room: number, bold = false): number =>
  Math.min(most, room / Math.max(...lines.map((line) => textWidth(line, bold))));
