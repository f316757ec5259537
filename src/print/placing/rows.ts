import { type SheetGrid, windowsAcross } from '../sheet-grid.ts';
import type { Size } from '../sheet-size.ts';

/** Kept free between pieces, mm: room for scissors. */
export const APART = 4;

/** Where boxes lie in rows: the left and the top of each, mm right of and below the first one's corner. */
export interface RowLayout {
  readonly at: readonly { readonly left: number; readonly top: number }[];
  readonly width: number;
  readonly height: number;
  /** Sheets of the rectangle around all of them, blank or not. */
  readonly sheets: number;
}

/**
 * Pieces as they come, side by side in rows as wide as so many sheets, in one rectangle. Of all row widths, the one
 * that takes fewest sheets: what a pattern costs in paper before any thought is given to placing it.
 */
export const inRows = (boxes: readonly Size[], grid: SheetGrid): RowLayout => {
  const { window, pitch } = grid;
  // One endless sheet? Then there is nothing to count.
  if (!Number.isFinite(window.width)) return layRows(boxes, totalWidth(boxes), grid);
  const widest = Math.max(...boxes.map((b) => b.width));
  const least = windowsAcross(widest, window.width, pitch.width);
  const most = windowsAcross(totalWidth(boxes), window.width, pitch.width);
  let best: RowLayout | null = null;
  for (let columns = least; columns <= most; columns++) {
    const layout = layRows(boxes, (columns - 1) * pitch.width + window.width, grid);
    if (best === null || layout.sheets < best.sheets) best = layout;
  }
  return best!;
};

const totalWidth = (boxes: readonly Size[]): number =>
  boxes.reduce((sum, b) => sum + b.width + APART, -APART);

const layRows = (boxes: readonly Size[], limit: number, { window, pitch }: SheetGrid): RowLayout => {
  const at: { left: number; top: number }[] = [];
  let [left, top, tall, width] = [0, 0, 0, 0];
  for (const box of boxes) {
    // Does the row go on?
    if (left > 0 && !(left + box.width <= limit)) [left, top, tall] = [0, top + tall + APART, 0];
    at.push({ left, top });
    width = Math.max(width, left + box.width);
    left += box.width + APART;
    tall = Math.max(tall, box.height);
  }
  const height = top + tall;
  const columns = Number.isFinite(pitch.width) ? windowsAcross(width, window.width, pitch.width) : 1;
  const rows = Number.isFinite(pitch.height) ? windowsAcross(height, window.height, pitch.height) : 1;
  return { at, width, height, sheets: columns * rows };
};
