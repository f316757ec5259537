import type { Mark } from '../../drawing/drawing.ts';
import { dateWords } from '../../drawing/label-words.ts';
import { textStyles } from '../../drawing/roles.ts';
import { movedMarks } from '../../drawing/steps/moved-mark.ts';
import { STEP_WIDTH } from '../../drawing/steps/step-drawing.ts';
import { point } from '../../geometry/point.ts';
import type { Thing } from '../../guide/step.ts';
import { formatLength, type Unit } from '../../units.ts';
import { say, type Words } from '../../words.ts';
import { column, fillColumns, type Part, paragraph, space } from '../cover/flow.ts';
import { fittedSize } from '../fitted-size.ts';
import type { PaperSpec } from '../paper.ts';
import { plainSet, withSheets } from '../plain-set.ts';
import type { Heading, Sheet, SheetSet } from '../sheet.ts';
import { sheetGrid } from '../sheet-grid.ts';
import type { Size } from '../sheet-size.ts';
import { text } from '../tag.ts';
import { type PrintedStep, stepParts } from './step-part.ts';

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

const GAP = 8;
const HEAD = 17;
const FOOT = 7;

/** The order of work as a set of its own: what is needed, then step by step with a box to tick. */
export const booklet = (content: BookletContent): SheetSet =>
  plainSet('sewing booklet', content.heading, (paper) => bookletSheets(content, paper));

/** The pattern and, on the same paper, the order of work after it. Endless paper takes no booklet: the set as it was. */
export const withBooklet = (set: SheetSet, content: BookletContent): SheetSet =>
  withSheets(set, (paper) => bookletSheets(content, paper));

/** The order of work on sheets of a paper, in as many columns as it holds. */
const bookletSheets = (content: BookletContent, paper: PaperSpec): readonly Sheet[] => {
  const room = sheetGrid(paper).window;
  const pages = pagesOf(content, room);
  return pages.map((marks, i) => ({
    name: `Sewing ${i + 1}`,
    cell: null,
    number: i + 1,
    of: pages.length,
    marks: movedMarks(
      [...marks, footMark(i + 1, pages.length, content.heading, room.width)],
      point(paper.margin, paper.margin),
    ),
    shows: null,
  }));
};

/** Marks of each page, its lower left corner inside the margins on the origin. */
const pagesOf = (content: BookletContent, room: Size): readonly (readonly Mark[])[] => {
  const columns = Math.max(1, Math.floor((room.width + GAP) / (STEP_WIDTH + GAP)));
  const wide = (room.width - GAP * (columns - 1)) / columns;
  const columnsFrom = (top: number) =>
    Array.from({ length: columns }, (_, i) => ({
      at: point(i * (wide + GAP), top),
      height: top - FOOT,
    }));
  const pages: (readonly Mark[])[] = [];
  let rest = partsOf(content, wide, room.height - FOOT);
  while (rest.length > 0) {
    const first = pages.length === 0;
    const laid = fillColumns(rest, columnsFrom(room.height - (first ? HEAD : 0)));
    // A part taller than a page would never end: no sheet is so low, but this must not hang.
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
  const { size } = textStyles.label;
  return [
    text('title', point(0, room.height - 3.5), [cap], fittedSize([cap], 7, room.width, true)),
    text('label', point(0, room.height - 10.5), [words], fittedSize([words], size, room.width)),
  ];
};

const footMark = (n: number, of: number, { cap }: Heading, width: number): Mark => {
  const words = `${cap} · Sewing ${n} of ${of}`;
  const size = fittedSize([words], textStyles.note.size, width);
  // So high that the tails of its letters are on the page.
  return { ...text('note', point(width, size * 0.7), [words], size), align: 'end' };
};

const partsOf = (content: BookletContent, width: number, most: number): readonly Part[] => [
  ...thingParts('Notions', content.notions, content.heading.unit, width),
  ...thingParts('Tools', content.tools, content.heading.unit, width),
  space(4),
  ...content.steps.flatMap((printed, i) => stepParts(printed, i + 1, content.heading.unit, width, most)),
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
