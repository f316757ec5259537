import type { Mark, PieceDrawing } from '../drawing/drawing.ts';
import type { Box } from '../geometry/box.ts';
import type { Problem } from '../pattern/problem.ts';
import type { Unit } from '../units.ts';
import type { PaperSpec } from './paper.ts';
import type { Cell, SheetGrid } from './sheet-grid.ts';
import type { Size } from './sheet-size.ts';

/** What the sheets say of the whole cap: `cap` what it is called, `wearer` '' where nobody is named, `date` as 2026-11-25, `finishedGirth` in mm. */
export interface Heading {
  readonly cap: string;
  readonly wearer: string;
  readonly date: string;
  readonly unit: Unit;
  readonly finishedGirth: number;
}

/** One printed page. */
export interface Sheet {
  /** 'A1': row letter, column number. The sheet before them, with the map and the test squares, is 'Map'. */
  readonly name: string;
  /** Null for a sheet that shows no part of the pattern. */
  readonly cell: Cell | null;
  readonly number: number;
  readonly of: number;
  /**
   * True millimetres from the page's lower left corner, y up; none lies outside the margins once the whole is
   * stretched about the corner of the margins by the set's `scale`.
   */
  readonly marks: readonly Mark[];
  /** What it shows of the plane the pieces lie on, mm. */
  readonly shows: Box | null;
}

/** All pages of one pattern on one paper. */
export interface SheetSet {
  readonly heading: Heading;
  /** What the file says it is; further sheets after a pattern make it nothing else. */
  readonly what: 'sewing pattern' | 'cutting lay' | 'sewing booklet';
  readonly paper: PaperSpec;
  /** The page, mm. */
  readonly page: Size;
  /** 100 / what the test square measured: what is drawn is stretched by this, so that it prints true. */
  readonly scale: { readonly across: number; readonly up: number };
  readonly sheets: readonly Sheet[];
  /** The pieces as they lie on the plane of sheets. */
  readonly pieces: readonly PieceDrawing[];
  readonly grid: SheetGrid;
  /** Sheets if the pieces lay in rows and the whole rectangle around them were printed, this one's map included. */
  readonly naiveCount: number;
  /** How many fewer this is. */
  readonly saved: number;
  /** What keeps the set from being printed. */
  readonly problems: readonly Problem[];
}

/** 'A1' from the first row and column on; after 'Z' come 'AA', 'AB' and so on. */
export const sheetName = ({ row, column }: Cell): string => `${letters(row)}${column + 1}`;

const letters = (n: number): string =>
  (n < 26 ? '' : letters(Math.floor(n / 26) - 1)) + String.fromCharCode(65 + (n % 26));
