import type { Box } from '../geometry/box.ts';
import { point } from '../geometry/point.ts';
import { SAME_POINT } from '../geometry/tolerance.ts';
import type { PaperSpec } from './paper.ts';
import { correction, printable, type Size } from './sheet-size.ts';

/** How equal windows lie over the pattern, mm of pattern. Neighbours share width - pitch.width across, and so down. */
export interface SheetGrid {
  /** What one sheet shows. */
  readonly window: Size;
  /** From one window to the next. */
  readonly pitch: Size;
}

/** The place of a sheet: rows count down from the top, columns to the right, both from 0. */
export interface Cell {
  readonly row: number;
  readonly column: number;
}

/**
 * The windows of a paper. A printer that draws small is made to draw larger, so each sheet then shows less of the
 * pattern, and nothing leaves the margins.
 */
export const sheetGrid = (paper: PaperSpec): SheetGrid => {
  const inside = printable(paper);
  const { across, up } = correction(paper);
  const window = { width: inside.width / across, height: inside.height / up };
  const shared = paper.join === 'overlap' ? paper.overlap : 0;
  return { window, pitch: { width: window.width - shared, height: window.height - shared } };
};

/** What the sheet in a cell shows. The first window has its top left corner on the origin. */
export const windowOf = ({ window, pitch }: SheetGrid, { row, column }: Cell): Box => {
  const left = column === 0 ? 0 : column * pitch.width;
  const top = row === 0 ? 0 : -row * pitch.height;
  return { min: point(left, top - window.height), max: point(left + window.width, top) };
};

/**
 * How many windows in a row cover a length: ceil((length - shared) / pitch), at least one. A length that is a whole
 * number of windows up to rounding is not given one more.
 */
export const windowsAcross = (length: number, window: number, pitch: number): number =>
  Math.max(1, Math.ceil((length - (window - pitch) - SAME_POINT) / pitch));
