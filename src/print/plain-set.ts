import type { Unit } from '../units.ts';
import type { PaperSpec } from './paper.ts';
import type { Heading, Sheet, SheetSet } from './sheet.ts';
import { sheetGrid } from './sheet-grid.ts';
import { pageSize, papers } from './sheet-size.ts';

const MARGIN = 12;

/** Plain sheets of the unit's own home paper, whatever the pattern lies on. */
const plainPaper = (unit: Unit): PaperSpec => ({
  paper: unit === 'in' ? 'letter' : 'a4',
  orientation: 'portrait',
  margin: MARGIN,
  join: 'butt',
  overlap: 0,
  halves: false,
  measuredAcross: 100,
  measuredDown: 100,
});

/** Sheets on a paper that show no part of the pattern, such as a booklet. */
export type SheetsFor = (paper: PaperSpec) => readonly Sheet[];

/** A set of its own on plain sheets. */
export const plainSet = (what: SheetSet['what'], heading: Heading, sheetsFor: SheetsFor): SheetSet => {
  const paper = plainPaper(heading.unit);
  const sheets = sheetsFor(paper);
  return {
    heading,
    what,
    paper,
    page: pageSize(paper),
    scale: { across: 1, up: 1 },
    sheets,
    pieces: [],
    grid: sheetGrid(paper),
    naiveCount: sheets.length,
    saved: 0,
    problems: [],
  };
};

/** The pattern and, on the same paper, further sheets after it. Endless paper takes none: the set as it was. */
export const withSheets = (set: SheetSet, sheetsFor: SheetsFor): SheetSet =>
  papers[set.paper.paper].kind === 'sheets'
    ? { ...set, sheets: [...set.sheets, ...sheetsFor(set.paper)] }
    : set;
