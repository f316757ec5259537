import type { TextMark, TextRole } from '../../drawing/drawing.ts';

/** Pixels to the millimetre of a line's weight: from very far, more with every pixel to the mm, and at most from afar. */
const [FAR, MORE, MOST] = [1.4, 1.4, 2.5];

/** Pixels for each millimetre of a line's weight and dash: true to paper close up, a legible minimum from afar. */
export const penScale = (scale: number): number => Math.max(scale, Math.min(FAR + MORE * scale, MOST));

/** The smallest em (pixels) at which each kind of text is shown; names and figures are enlarged to it, the rest waits. */
const least: Readonly<Record<TextRole, { readonly size: number; readonly enlarge: boolean }>> = {
  title: { size: 13.5, enlarge: true },
  dimension: { size: 12.5, enlarge: true },
  label: { size: 10, enlarge: false },
  note: { size: 9.5, enlarge: false },
  sheet: { size: 10, enlarge: false },
};

/** The em of a text on the screen, pixels; null where it would be too small to read. */
export const screenSize = ({ role, size }: Pick<TextMark, 'role' | 'size'>, scale: number): number | null => {
  const { size: smallest, enlarge } = least[role];
  const px = size * scale;
  return px >= smallest ? px : enlarge ? smallest : null;
};
