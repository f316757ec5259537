import type { LineRole, Mark, PieceDrawing } from '../../drawing/drawing.ts';
import { dateWords } from '../../drawing/label-words.ts';
import { textStyles } from '../../drawing/roles.ts';
import type { WornDrawing } from '../../drawing/worn-drawing.ts';
import { type Point, point } from '../../geometry/point.ts';
import { formatLength } from '../../units.ts';
import { fittedSize } from '../fitted-size.ts';
import type { PaperSpec } from '../paper.ts';
import type { Heading } from '../sheet.ts';
import type { Cell, SheetGrid } from '../sheet-grid.ts';
import type { Size } from '../sheet-size.ts';
import { text } from '../tag.ts';
import { fillColumns, flush, type Part, paragraph } from './flow.ts';
import { sheetMap } from './map.ts';
import { pictureIn } from './picture.ts';
import { pieceParts } from './pieces.ts';
import { coverPlan, GAP, HEAD, isUseful, type Region, SQUARE_MM } from './size.ts';
import { inchSquare, metricSquare } from './squares.ts';

/** What the first sheet is made from. */
export interface CoverContent {
  readonly heading: Heading;
  readonly paper: PaperSpec;
  readonly pieces: readonly PieceDrawing[];
  readonly cells: readonly Cell[];
  readonly grid: SheetGrid;
  /** The cap as it is worn, where it is known. */
  readonly picture?: WornDrawing | null;
}

/**
 * The first sheet, and more where the list of pieces is long: whose cap, the test squares, the sheet map, the key of
 * the lines, the pieces. Marks in a box of a size (mm), its lower left corner on the origin.
 */
export const coverSheets = (content: CoverContent, size: Size): readonly (readonly Mark[])[] => {
  const { stacked, beside, below } = coverPlan(size);
  const top = size.height - HEAD;
  const inchAt = stacked ? point(0, top - SQUARE_MM - GAP) : point(SQUARE_MM + GAP, top);
  const squares = [
    ...metricSquare(content.cells.length)(point(0, top)).marks,
    ...inchPart(content)(inchAt).marks,
  ];
  const map = mapIn(content, stacked ? [beside, below] : [below, beside]);
  const free = [beside, below].map((r) => (r === map.region ? map.rest : r)).filter(isUseful);
  const { marks, rest } = fillWithPicture(content, free, size);
  const first = [...headMarks(content.heading, size), ...squares, ...map.marks, ...marks];
  return [first, ...furtherSheets(rest, content, size)];
};

/** A narrow map still has its title over it, mm. */
const TITLE_WIDTH = 25;

/** The map in the first region that can hold it, which one that is, and what is left of it. */
const mapIn = (
  content: CoverContent,
  regions: readonly [Region, Region],
): { readonly marks: readonly Mark[]; readonly region: Region; readonly rest: Region } => {
  const region = regions.find(isUseful) ?? regions[0];
  const upright = region.height > region.width;
  const most = upright
    ? { width: region.width, height: region.height * 0.45 }
    : { width: region.width * 0.6, height: region.height };
  const { marks, height, width } = mapPart(content, most)(point(region.left, region.top));
  const taken = Math.max(width, TITLE_WIDTH) + GAP;
  const rest = upright
    ? { ...region, top: region.top - height - GAP, height: region.height - height - GAP }
    : { ...region, left: region.left + taken, width: region.width - taken };
  return { marks, region, rest };
};

/** The list of pieces, and in a region that it leaves free the cap as it is worn. */
const fillWithPicture = (content: CoverContent, regions: readonly Region[], size: Size) => {
  const [picture, last] = [content.picture, regions.at(-1)];
  if (picture && last && regions.length > 1) {
    const list = fillRegions(content, regions.slice(0, -1), size);
    if (list.rest.length === 0) return { ...list, marks: [...list.marks, ...pictureIn(picture, last)] };
  }
  return fillRegions(content, regions, size);
};

/** As much of the list of pieces as some regions hold. */
const fillRegions = (content: CoverContent, regions: readonly Region[], size: Size) => {
  const [narrowest] = [...regions].sort((a, b) => a.width - b.width);
  const parts = listParts(content, narrowest?.width ?? (size.width - GAP) / 2);
  return fillColumns(
    parts,
    regions.map(({ left, top, height }) => ({ at: point(left, top), height })),
  );
};

/** The list goes on over as many sheets as it needs. */
const furtherSheets = (
  rest: readonly Part[],
  content: CoverContent,
  size: Size,
): readonly (readonly Mark[])[] => {
  if (rest.length === 0) return [];
  const wide = (size.width - GAP) / 2;
  const columns = [0, wide + GAP].map((x) => ({
    at: point(x, size.height - HEAD),
    height: size.height - HEAD,
  }));
  const { marks, rest: more } = fillColumns(rest, columns);
  // A part taller than a sheet would never end: it cannot be, but this must not hang.
  const further = more.length < rest.length ? furtherSheets(more, content, size) : [];
  return [[...headMarks(content.heading, size), ...marks], ...further];
};

export const inchPart = ({ pieces, cells, paper }: CoverContent): Part => {
  const roles = new Set(
    pieces.flatMap((p) => p.marks.flatMap((m): LineRole[] => (m.kind === 'line' ? [m.role] : []))),
  );
  if (cells.length > 1) roles.add('sheet');
  return inchSquare(roles, paper, cells.length > 1);
};

export const listParts = ({ pieces }: CoverContent, width: number): readonly Part[] => [
  paragraph('title', pieces.length === 1 ? 'One piece' : `${pieces.length} pieces`, width, 1),
  ...pieceParts(pieces, width),
];

const mapPart =
  ({ cells, pieces, grid }: CoverContent, most: Size) =>
  (at: Point) => {
    const head = flush('title', paragraph('title', 'Sheet map', most.width, 1.5))(at);
    const room = { width: most.width, height: most.height - head.height };
    const map = sheetMap(cells, pieces, grid, room)(point(at.x, at.y - head.height));
    return { marks: [...head.marks, ...map.marks], height: head.height + map.height, width: map.width };
  };

/** Whose cap this is. */
export const headMarks = (
  { cap, wearer, date, unit, finishedGirth }: Heading,
  size: Size,
): readonly Mark[] => {
  const girth = `Finished girth ${formatLength(finishedGirth, unit)}`;
  const facts = [wearer === '' ? '' : `For ${wearer}`, girth, dateWords(date)].filter((s) => s !== '');
  // A long name is set smaller rather than broken.
  const room = size.width - TAG;
  const line = facts.join(' · ');
  return [
    text('title', point(0, size.height - 3.5), [cap], fittedSize([cap], 7, room, true)),
    text('label', point(0, size.height - 10.5), [line], fittedSize([line], textStyles.label.size, room)),
  ];
};

/** Kept free for the sheet's name at the right of the heading, mm. */
const TAG = 30;

/** A first sheet's own name and number, in its upper right corner. */
export const coverTag = (words: string, size: Size): Mark => ({
  ...text('note', point(size.width, size.height - 3.5), [words]),
  align: 'end',
});
