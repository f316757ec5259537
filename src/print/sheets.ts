import type { Mark, PieceDrawing, TextMark } from '../drawing/drawing.ts';
import { movedMarks } from '../drawing/steps/moved-mark.ts';
import type { WornDrawing } from '../drawing/worn-drawing.ts';
import { boundsOf } from '../geometry/bounds.ts';
import { type Box, boxesMeet, boxUnion } from '../geometry/box.ts';
import { point } from '../geometry/point.ts';
import { say, words } from '../words.ts';
import { clippedLine } from './clipped.ts';
import { clutterOf } from './clutter.ts';
import { type CoverContent, coverSheets, coverTag } from './cover/cover.ts';
import { coverBlock } from './cover/cover-block.ts';
import { joinMarks, visiblePart } from './joins.ts';
import { labelsOn } from './labels.ts';
import type { PaperSpec } from './paper.ts';
import { paperProblems } from './paper-problems.ts';
import { placePieces } from './place.ts';
import { type Heading, type Sheet, type SheetSet, sheetName } from './sheet.ts';
import { furniture } from './sheet-furniture.ts';
import { type Cell, type SheetGrid, sheetGrid, windowOf } from './sheet-grid.ts';
import { correction, pageSize, papers, type Size } from './sheet-size.ts';

/**
 * Tiles a pattern over sheets of a paper: the pieces placed to use few sheets, each sheet's part of them cut out
 * with joining marks and a name, and before them one with the test squares, the sheet map and, where it leaves room, a
 * picture of the cap. No pieces, no sheets.
 * Throws RangeError for a paper with problems (see paperProblems).
 */
export const sheetsOf = (
  pieces: readonly PieceDrawing[],
  paper: PaperSpec,
  heading: Heading,
  picture: WornDrawing | null = null,
): SheetSet => {
  const [problem] = paperProblems(paper);
  if (problem !== undefined) throw new RangeError(`invalid ${problem.field}: ${say(problem.message, 'cm')}`);
  const grid = sheetGrid(paper);
  // Nothing to print?
  if (pieces.length === 0)
    return setOf({ heading, paper, pieces, cells: [], grid }, { width: 0, height: 0 }, [], 0);
  return papers[paper.paper].kind === 'sheets'
    ? stackOf(pieces, paper, heading, grid, picture)
    : endlessOf(pieces, paper, heading, grid, picture);
};

const stackOf = (
  drawings: readonly PieceDrawing[],
  paper: PaperSpec,
  heading: Heading,
  grid: SheetGrid,
  picture: WornDrawing | null,
): SheetSet => {
  const { pieces, cells, naiveSheets } = placePieces(drawings, grid);
  const content = { heading, paper, pieces, cells, grid, picture };
  const covers = coverSheets(content, grid.window);
  const of = covers.length + cells.length;
  const corner = point(paper.margin, paper.margin);
  const first = covers.map((marks, i): Sheet => {
    const name = i === 0 ? 'Map' : `Map ${i + 1}`;
    const number = i + 1;
    const own = [...marks, coverTag(`${name} · ${number} of ${of}`, grid.window)];
    return { name, cell: null, number, of, marks: movedMarks(own, corner), shows: null };
  });
  const rest = patternSheets(content, covers.length + 1, of);
  return setOf(content, pageSize(paper), [...first, ...rest], naiveSheets + covers.length);
};

/** A roll, or one page: the block with the test squares, the list and the picture lies among the pieces. */
const endlessOf = (
  drawings: readonly PieceDrawing[],
  paper: PaperSpec,
  heading: Heading,
  endless: SheetGrid,
  picture: WornDrawing | null,
): SheetSet => {
  const one = { heading, paper, pieces: drawings, cells: [{ row: 0, column: 0 }], grid: endless, picture };
  const placed = placePieces(drawings, endless, coverBlock(one));
  const { pieces, cells, grid, naiveSheets } = placed;
  const content = { heading, paper, pieces, cells, grid };
  const { across, up } = correction(paper);
  const page = {
    width: grid.window.width * across + 2 * paper.margin,
    height: grid.window.height * up + 2 * paper.margin,
  };
  return setOf(content, page, patternSheets(content, 1, cells.length, placed.block), naiveSheets);
};

const setOf = (
  { heading, paper, pieces, grid }: CoverContent,
  page: Size,
  sheets: readonly Sheet[],
  naiveCount: number,
): SheetSet => ({
  heading,
  what: 'sewing pattern',
  paper,
  page,
  scale: correction(paper),
  sheets,
  pieces,
  grid,
  naiveCount,
  saved: naiveCount - sheets.length,
  problems: tooLong(page),
});

/** A page of a PDF goes no further than 14,400 points (PDF 1.7, annex C). */
const LONGEST_PAGE = (14400 / 72) * 25.4;

const tooLong = ({ width, height }: Size): SheetSet['problems'] =>
  width <= LONGEST_PAGE && height <= LONGEST_PAGE
    ? []
    : [
        {
          field: 'paper.paper',
          message: words`The pattern is longer than one page of a PDF can be: choose a wider roll or single sheets.`,
        },
      ];

const patternSheets = (
  content: CoverContent,
  firstNumber: number,
  of: number,
  block?: PieceDrawing,
): readonly Sheet[] => {
  const { cells, grid, paper, heading } = content;
  const drawn = block ? [...content.pieces, block] : content.pieces;
  const texts = textsBySheet(drawn, content);
  const outlines = drawn.map((piece) => piece.silhouette);
  const lines = drawn.flatMap((piece) => piece.marks.filter((m) => m.kind === 'line'));
  const whole = boxUnion(cells.map((cell) => windowOf(grid, cell)));
  const clutter = clutterOf(whole, [...lines, ...texts.flat()], [], FINE);
  return cells.map((cell, i): Sheet => {
    const window = windowOf(grid, cell);
    const shown = drawn.flatMap((piece) => linesIn(piece, window));
    const joins = joinMarks(cell, cells, grid, paper, clutter);
    const marks = [...shown, ...texts[i]!, ...joins];
    const number = firstNumber + i;
    const name = sheetName(cell);
    const own = furniture({ name, number, of, heading }, visiblePart(cell, cells, grid), marks, outlines);
    const toPage = point(paper.margin - window.min.x, paper.margin - window.min.y);
    return { name, cell, number, of, marks: movedMarks([...marks, ...own], toPage), shows: window };
  });
};

/** Cells in which what lies along the joins is told apart: the air round a name beside a mark is 1.5 mm. */
const FINE = 1;

const linesIn = (piece: PieceDrawing, window: Box): readonly Mark[] =>
  boxesMeet(piece.bounds, window)
    ? piece.marks.flatMap((mark) =>
        mark.kind === 'line' && boxesMeet(boundsOf(mark.path), window) ? clippedLine(mark, window) : [],
      )
    : [];

/** Free along the joins, mm: the joining marks stand there. */
const CLEAR_OF_JOINS = 6;

const textsBySheet = (
  pieces: readonly PieceDrawing[],
  { cells, grid }: CoverContent,
): readonly (readonly TextMark[])[] => {
  const boxes = cells.map((cell: Cell) => visiblePart(cell, cells, grid, CLEAR_OF_JOINS));
  const each = pieces.map((piece) => labelsOn(piece, boxes));
  return cells.map((_, i) => each.flatMap((on) => on[i] ?? []));
};
