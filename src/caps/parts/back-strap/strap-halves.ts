import { pathLength } from '../../../geometry/measure.ts';
import { arc, line } from '../../../geometry/path.ts';
import { point } from '../../../geometry/point.ts';
import type { Figure, Notch, Piece } from '../../../pattern/piece.ts';
import { exactMm, mm, words } from '../../../words.ts';
import { one, plain } from '../seams/seam.ts';
import type { Across, Fastening } from './fastening.ts';
import type { BackStrapValues } from './parameters.ts';
import { TUCK, tuckNote } from './tuck.ts';

/**
 * A strap in two halves that are alike, each sewn in at one side of the opening and passing the centre back, one over the other.
 * Copies 0 and 1 are the two layers of the wearer's left half, 2 and 3 those of the right, which lies the other way round.
 */
export const strapHalves = (values: BackStrapValues, openingWidth: number, within: number): Fastening => {
  const half = strapHalf(values, openingWidth);
  const long = pathLength(half.outline[0]!.path);
  const across = (layer: 0 | 1, reach: number): Across => ({
    toRight: { ...one(half.id, 'top', 2 + layer), from: long - TUCK - reach, to: long - TUCK },
    fromLeft: { ...one(half.id, 'bottom', layer), from: TUCK, to: TUCK + reach },
  });
  const seam = (name: string, copy: number) =>
    plain(
      `backStrap${name}`,
      `Back strap edge, ${name.toLowerCase()} half`,
      'strapEdge',
      EDGES.map((edge) => one(half.id, edge, copy)),
      EDGES.map((edge) => one(half.id, edge, copy + 1)),
    );
  const reach = (openingWidth - values.backRoom) / 2;
  return {
    pieces: [half],
    seams: [seam('Left', 0), seam('Right', 2)],
    outer: across(0, reach),
    inner: across(1, reach * within),
  };
};

const EDGES = ['bottom', 'right', 'top'];

/** One half, its sewn-in end on the left: open there, round at the other. The straight part of either long edge goes past the centre back. */
const strapHalf = (
  { backStrapWidth: width, backRoom, backOverlap }: BackStrapValues,
  opening: number,
): Piece => {
  const length = TUCK + opening / 2 + backOverlap + width / 2;
  const r = width / 2;
  const x = length - r;
  const [a, b, c, d] = [point(0, 0), point(x, 0), point(x, width), point(0, width)] as const;
  const centre = TUCK + (opening - backRoom) / 2;
  const notches = (edge: string, at: (mm: number) => number): readonly Notch[] => [
    { edge, at: at(TUCK), count: 1, name: 'edge of the opening' },
    { edge, at: at(centre), count: 2, name: 'centre back' },
  ];
  return {
    id: 'backStrap',
    name: 'Back strap half',
    cuts: [{ cloth: 'outer', count: 4 }],
    outline: [
      { name: 'bottom', path: [line(a, b)], kind: 'strapEdge' },
      { name: 'right', path: [arc(point(x, r), b, Math.PI)], kind: 'strapEdge' },
      { name: 'top', path: [line(c, d)], kind: 'strapEdge' },
      { name: 'left', path: [line(d, a)], kind: 'none' },
    ],
    foldable: false,
    grain: [point(x - 8, r), point(x + r * 0.5, r)],
    notches: [...notches('bottom', (mm) => mm), ...notches('top', (mm) => x - mm)],
    centreLines: [[line(point(TUCK, 0), point(TUCK, width))]],
    marks: [],
    labelAt: point((x - 10) / 2, r),
    dimensions: [
      { name: 'Length', along: [line(point(0, width * 0.2), point(length, width * 0.2))] },
      { name: 'Width', along: [line(d, a)] },
    ],
    figures: lengthFigures(opening, backRoom, backOverlap, width, length),
    notions: [
      {
        name: 'Hook and loop tape, press studs or a small buckle',
        // Drawn in, the halves lie on each other so far.
        size: words`the tape ${mm(2 * backOverlap + backRoom)} long, for a strap ${mm(width)} wide`,
      },
    ],
    notes: [
      tuckNote,
      words`Hook and loop tape, press studs or a small buckle where the halves lie on each other; plastic where metal irritates.`,
    ],
  };
};

const lengthFigures = (
  opening: number,
  room: number,
  overlap: number,
  width: number,
  length: number,
): readonly Figure[] => [
  {
    name: 'Across the opening at the finished girth',
    formula: 'opening width − room to let out',
    worked: words`${exactMm(opening)} − ${exactMm(room)} = ${exactMm(opening - room)}`,
  },
  {
    name: 'Length of a strap half',
    formula: 'sewn in + half the opening + overlap + half the width for the round end',
    worked: words`${exactMm(TUCK)} + ${exactMm(opening / 2)} + ${exactMm(overlap)} + ${exactMm(width / 2)} = ${exactMm(length)}`,
  },
];
