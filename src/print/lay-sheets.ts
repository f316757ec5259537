import { lengthBought, toBuy } from '../cloth/buying.ts';
import { capsInWords } from '../cloth/cap-names.ts';
import type { ClothLay } from '../cloth/cloth-lay.ts';
import { clothNames } from '../drawing/cut-words.ts';
import { drawLay, laySize } from '../drawing/draw-lay.ts';
import type { Mark } from '../drawing/drawing.ts';
import { dateWords } from '../drawing/label-words.ts';
import { textStyles } from '../drawing/roles.ts';
import { movedMarks } from '../drawing/steps/moved-mark.ts';
import { point } from '../geometry/point.ts';
import { formatLength, type Unit } from '../units.ts';
import { fittedSize } from './fitted-size.ts';
import type { PaperSpec } from './paper.ts';
import { plainSet, withSheets } from './plain-set.ts';
import type { Heading, Sheet, SheetSet } from './sheet.ts';
import { sheetGrid } from './sheet-grid.ts';
import type { Size } from './sheet-size.ts';
import { text } from './tag.ts';

const HEAD = 20;

/** The cutting lays of a cap as a set of their own, a page for each cloth. */
export const laySet = (lays: readonly ClothLay[], heading: Heading): SheetSet =>
  plainSet('cutting lay', heading, (paper) => laySheets(lays, heading, paper));

/** The pattern and, on the same paper, its cutting lays after it. */
export const withLays = (set: SheetSet, lays: readonly ClothLay[]): SheetSet =>
  withSheets(set, (paper) => laySheets(lays, set.heading, paper));

/** A page for each lay, as large as the page allows. */
const laySheets = (lays: readonly ClothLay[], heading: Heading, paper: PaperSpec): readonly Sheet[] => {
  const room = sheetGrid(paper).window;
  return lays.map((lay, i) => {
    const size = laySize(lay);
    const k = Math.min(room.width / size.width, (room.height - HEAD) / size.height);
    const top = room.height - HEAD - k * size.height;
    const marks = [...headMarks(lay, heading, k, room), ...movedMarks(drawLay(lay, k), point(0, top))];
    return {
      name: `Lay ${i + 1}`,
      cell: null,
      number: i + 1,
      of: lays.length,
      marks: movedMarks(marks, point(paper.margin, paper.margin)),
      shows: null,
    };
  });
};

const headMarks = (
  lay: ClothLay,
  { cap, wearer, date, unit }: Heading,
  k: number,
  room: Size,
): readonly Mark[] => {
  const title = `Cutting lay, ${clothNames[lay.cloth].toLowerCase()}`;
  const lines = [
    [...capWords(lay, cap, wearer), dateWords(date)].filter((part) => part !== '').join(' · '),
    `${groundWords(lay, unit)}. Drawn 1 : ${Math.round(1 / k)}.`,
  ];
  const size = fittedSize(lines, textStyles.label.size, room.width);
  return [
    text('title', point(0, room.height - 3.5), [title], 6),
    text('label', point(0, room.height - 12.5), lines, size),
  ];
};

/** One cap with its wearer's name; of several all names. */
const capWords = ({ caps }: ClothLay, cap: string, wearer: string): readonly string[] =>
  caps.reduce((sum, { count }) => sum + count, 0) > 1
    ? [capsInWords(caps)]
    : [cap, wearer === '' ? '' : `for ${wearer}`];

/** What it is laid on and what it takes. */
const groundWords = (lay: ClothLay, unit: Unit): string => {
  const length = (mm: number): string => formatLength(mm, unit);
  const left = lay.left.length > 0 ? `; ${lay.left.length} pieces find no place` : '';
  if (lay.scraps.length > 0)
    return `On ${lay.scraps.length === 1 ? 'one scrap' : `${lay.scraps.length} scraps`}${left}`;
  const wide = lay.folded
    ? `${length(2 * lay.width)} wide, folded to ${length(lay.width)}`
    : `${length(lay.width)} wide`;
  const takes =
    lay.remnant === null
      ? `takes ${length(lay.length)}: buy ${lengthBought(toBuy(lay.bought, unit), unit)}`
      : `takes ${length(lay.length)} of ${length(lay.remnant)}`;
  return `Cloth ${wide}, ${takes}${left}`;
};
