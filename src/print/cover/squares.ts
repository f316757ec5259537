import type { LineRole, Mark } from '../../drawing/drawing.ts';
import { textStyles } from '../../drawing/roles.ts';
import { line, polygon } from '../../geometry/path.ts';
import { type Point, point } from '../../geometry/point.ts';
import type { PaperSpec } from '../paper.ts';
import { text } from '../tag.ts';
import { column, type Part, paragraph, space } from './flow.ts';
import { SQUARE_INCH, SQUARE_MM } from './size.ts';

/** From a square's line to the words inside it, mm. */
const PAD = 8;

/** A square with its upper left corner on a point, its length written along two of its sides, and words inside. */
const square =
  (length: number, label: string, inside: readonly Part[]): Part =>
  (at) => {
    const [x0, x1, y0, y1] = [at.x, at.x + length, at.y - length, at.y];
    const { size } = textStyles.dimension;
    const foot = {
      ...text('dimension', point((x0 + x1) / 2, y0 + size), [label]),
      align: 'middle' as const,
    };
    const side = {
      ...text('dimension', point(x1 - size, (y0 + y1) / 2), [label]),
      align: 'middle' as const,
      angle: Math.PI / 2,
    };
    const outline: Mark = {
      kind: 'line',
      role: 'mark',
      path: polygon([point(x0, y0), point(x1, y0), point(x1, y1), point(x0, y1)]),
    };
    const words = column(inside)(point(x0 + PAD, y1 - PAD));
    return { marks: [outline, foot, side, ...words.marks], height: length };
  };

/** The 100 mm test square, with what to do about it; more sheets may follow. */
export const metricSquare = (sheets: number): Part => {
  const width = SQUARE_MM - 2 * PAD;
  const note = (words: string): Part => paragraph('note', words, width, 2);
  return square(SQUARE_MM, '100 mm', [
    paragraph('title', 'Print at 100 %', width, 1),
    paragraph('label', 'Do not fit to page, shrink or enlarge.', width, 5),
    note(
      sheets > 1
        ? 'Print this sheet first and measure this square with a ruler, across and down.'
        : 'Measure this square with a ruler, across and down, before you cut.',
    ),
    note(sheets > 1 ? '100 mm both ways: print the rest.' : '100 mm both ways: all is well.'),
    note('Off by a little: type what you measured under Paper, and download the pattern again.'),
    note(
      'Off by more than 10 mm: the print was scaled. Look for “actual size” or “100 %” in the print dialog.',
    ),
  ]);
};

/** The 4 in test square, with the key of the lines and how the sheets are joined. */
export const inchSquare = (
  roles: ReadonlySet<LineRole>,
  { join }: Pick<PaperSpec, 'join'>,
  joined: boolean,
): Part => {
  const width = SQUARE_INCH - 2 * PAD;
  const steps = joined ? JOINING[join] : [];
  return square(SQUARE_INCH, '4 in', [
    ...KEY.filter(([role]) => roles.has(role)).map(([role, words]) => sample(role, words)),
    space(3),
    ...steps.map((words, i) => paragraph(i === 0 ? 'sheet' : 'note', words, width, 1)),
  ]);
};

/** Each kind of line and its name in the trade. */
const KEY: readonly (readonly [LineRole, string])[] = [
  ['cut', 'cut line'],
  ['stitch', 'stitch line'],
  ['row', 'topstitching; beside a stiffener'],
  ['fold', 'fold: lay it on folded cloth'],
  ['grain', 'grainline, along the cloth'],
  ['notch', 'notch: meets its partner'],
  ['centre', 'centre line'],
  ['sheet', 'where sheets join'],
];

const SAMPLE = 26;

const sample =
  (role: LineRole, words: string): Part =>
  (at) => {
    const height = 4.8;
    const y = at.y - height / 2;
    const [from, to] = [point(at.x, y), point(at.x + SAMPLE, y)];
    return {
      marks: [...drawnSample(role, from, to), text('note', point(to.x + 4, y), [words])],
      height,
    };
  };

const drawnSample = (role: LineRole, from: Point, to: Point): readonly Mark[] => {
  const middle = (from.x + to.x) / 2;
  const notch = [
    point(middle - 2, from.y - 1.6),
    point(middle + 2, from.y - 1.6),
    point(middle, from.y + 1.6),
  ];
  if (role === 'notch') return [{ kind: 'line', role, path: polygon(notch), filled: true }];
  const stroke: Mark = { kind: 'line', role, path: [line(from, to)] };
  return role === 'grain' ? [stroke, ...heads(from, to)] : [stroke];
};

const heads = (from: Point, to: Point): readonly Mark[] =>
  [
    { tip: from, way: 1 },
    { tip: to, way: -1 },
  ].map(({ tip, way }) => ({
    kind: 'line',
    role: 'grain',
    filled: true,
    path: polygon([tip, point(tip.x + way * 3, tip.y + 1), point(tip.x + way * 3, tip.y - 1)]),
  }));

/** Most patterns have sheets that stand alone. */
const ONLY_WHERE = 'Only sheets that share a piece need joining.';

const JOINING: Readonly<Record<PaperSpec['join'], readonly string[]>> = {
  overlap: [
    'Joining the sheets',
    'Cut off the margin along the dashed line at the left and at the top of a sheet, where it has a neighbour there.',
    'Lay it over the neighbour up to that sheet’s dashed line, so that the diamonds close, and glue. Work row by row.',
    ONLY_WHERE,
  ],
  butt: [
    'Joining the sheets',
    'Cut off the margins along the dashed lines.',
    'Lay the edges together, so that the half diamonds close, and tape them from behind. Work row by row.',
    ONLY_WHERE,
  ],
};
