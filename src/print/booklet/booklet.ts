import type { Mark } from '../../drawing/drawing.ts';
import { dateWords } from '../../drawing/label-words.ts';
import { textStyles } from '../../drawing/roles.ts';
import { movedMarks } from '../../drawing/steps/moved-mark.ts';
import { textWidth } from '../../drawing/text-width.ts';
import { point } from '../../geometry/point.ts';
import type { Thing } from '../../guide/step.ts';
import { formatLength, type Unit } from '../../units.ts';
import { say, type Words } from '../../words.ts';
import { column, fillColumns, type Part, paragraph, space } from '../cover/flow.ts';
import type { PaperSpec } from '../paper.ts';
import type { Heading, Sheet, SheetSet } from '../sheet.ts';
import { sheetGrid } from '../sheet-grid.ts';
import { pageSize, type Size } from '../sheet-size.ts';
import { text } from '../tag.ts';
import { type PrintedStep, stepPart } from './step-part.ts';

/** The order of work to be printed. */
export interface BookletContent {
  readonly heading: Heading;
  readonly steps: readonly PrintedStep[];
  readonly tools: readonly Thing[];
  readonly notions: readonly Thing[];
  /** How long it takes, in words. */
  readonly time: string;
  readonly forAChild: readonly Words[];
}

const MARGIN = 12;
const COLUMNS = 2;
const GAP = 8;
const HEAD = 17;
const FOOT = 7;

/** A booklet is printed on plain sheets, whatever the pattern lies on. */
const paperFor = (unit: Unit): PaperSpec => ({
  paper: unit === 'in' ? 'letter' : 'a4',
  orientation: 'portrait',
  margin: MARGIN,
  join: 'butt',
  overlap: 0,
  halves: false,
  measuredAcross: 100,
  measuredDown: 100,
});

/** The order of work as sheets in two columns: what is needed, then step by step with a box to tick. */
export const booklet = (content: BookletContent): SheetSet => {
  const { heading } = content;
  const paper = paperFor(heading.unit);
  const page = pageSize(paper);
  const pages = pagesOf(content, { width: page.width - 2 * MARGIN, height: page.height - 2 * MARGIN });
  const sheets = pages.map(
    (marks, i): Sheet => ({
      name: `Sewing ${i + 1}`,
      cell: null,
      number: i + 1,
      of: pages.length,
      marks: movedMarks(
        [...marks, footMark(i + 1, pages.length, heading, page.width - 2 * MARGIN)],
        point(MARGIN, MARGIN),
      ),
      shows: null,
    }),
  );
  return {
    heading,
    title: `${heading.cap === '' ? 'Cap' : heading.cap}, sewing booklet`,
    paper,
    page,
    scale: { across: 1, up: 1 },
    sheets,
    pieces: [],
    grid: sheetGrid(paper),
    naiveCount: sheets.length,
    saved: 0,
    problems: [],
  };
};

/** Marks of each page, its lower left corner inside the margins on the origin. */
const pagesOf = (content: BookletContent, room: Size): readonly (readonly Mark[])[] => {
  const wide = (room.width - GAP * (COLUMNS - 1)) / COLUMNS;
  const columnsFrom = (top: number) =>
    Array.from({ length: COLUMNS }, (_, i) => ({
      at: point(i * (wide + GAP), top),
      height: top - FOOT,
    }));
  const pages: (readonly Mark[])[] = [];
  let rest = partsOf(content, wide);
  while (rest.length > 0) {
    const first = pages.length === 0;
    const laid = fillColumns(rest, columnsFrom(room.height - (first ? HEAD : 0)));
    // A part taller than a page would never end: it cannot be, but this must not hang.
    if (laid.rest.length === rest.length) break;
    pages.push([...(first ? headMarks(content, room) : []), ...laid.marks]);
    rest = laid.rest;
  }
  return pages;
};

const headMarks = ({ heading, time }: BookletContent, room: Size): readonly Mark[] => {
  const { cap, wearer, finishedGirth, unit, date } = heading;
  const facts = [
    'Sewing booklet',
    wearer === '' ? '' : `For ${wearer}`,
    `Finished girth ${formatLength(finishedGirth, unit)}`,
    time,
    dateWords(date),
  ];
  const words = facts.filter((fact) => fact !== '').join(' · ');
  const fitted = (line: string, most: number, bold: boolean): number =>
    Math.min(most, room.width / Math.max(textWidth(line, bold), 1));
  return [
    text('title', point(0, room.height - 3.5), [cap], fitted(cap, 7, true)),
    text('label', point(0, room.height - 10.5), [words], fitted(words, textStyles.label.size, false)),
  ];
};

const footMark = (n: number, of: number, { cap }: Heading, width: number): Mark => ({
  ...text('note', point(width, 1.5), [`${cap === '' ? '' : `${cap} · `}Sewing ${n} of ${of}`]),
  align: 'end',
});

const partsOf = (content: BookletContent, width: number): readonly Part[] => [
  ...thingParts('Notions', content.notions, content.heading.unit, width),
  ...thingParts('Tools', content.tools, content.heading.unit, width),
  space(4),
  ...content.steps.map((printed, i) => stepPart(printed, i + 1, content.heading.unit, width)),
  column([
    paragraph('title', 'For a child’s cap', width, 1),
    ...content.forAChild.map((sentence) => paragraph('note', say(sentence, content.heading.unit), width, 1)),
  ]),
];

const thingParts = (title: string, all: readonly Thing[], unit: Unit, width: number): readonly Part[] => [
  paragraph('title', title, width, 0.5),
  ...all.map(({ name, words }) =>
    paragraph('note', words ? `${name}: ${say(words, unit)}` : name, width, 0.4),
  ),
  space(2),
];
