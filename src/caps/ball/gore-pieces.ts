import { pathLength } from '../../geometry/measure.ts';
import { line, pathEnd, pathStart } from '../../geometry/path.ts';
import { point } from '../../geometry/point.ts';
import type { Cloth, Edge, Figure, Notch, Piece, PieceMark } from '../../pattern/piece.ts';
import { count, exactMm, mm, type Words, words } from '../../words.ts';
import type { GoreShape } from '../parts/gore/gore.ts';
import type { BallCrownShape } from './crown-shape.ts';

export interface GoreMarks {
  readonly eyelets: boolean;
  /** The stretch of the lower edge that the visor is sewn to, mm. */
  readonly visorStretch: number;
  /** Up a gore to where the crown turns in, mm. */
  readonly upright: number;
  readonly figures: readonly Figure[];
}

/** Across an eyelet's hole, and how far up its gore it sits (common practice). */
const EYELET = 6;
const EYELET_AT = 2 / 3;

/** Front, side and back gore of the wearer's right half; each is cut once more, mirrored, for the left. */
export const ballGores = (shape: BallCrownShape, marks: GoreMarks): readonly Piece[] => {
  const base = pathLength(shape.side.bottom);
  return [frontGore(shape, marks, base), sideGore(shape, marks, base), backGore(shape, marks, base)];
};

const frontGore = (shape: BallCrownShape, marks: GoreMarks, base: number): Piece => ({
  ...common(shape.front, ['outer', 'interlining']),
  id: 'goreFront',
  name: 'Front gore',
  outline: edgesOf(shape.front),
  notches: [...turnNotches(shape.front, marks.upright), ...visorEnd(base - marks.visorStretch / 2, base)],
  marks: [...eyelet(shape.front, marks), edgeWord('centre front', base)],
  figures: [...marks.figures, wayFigure('front', shape.front, shape), tapeFigure(shape)],
  notes: [
    words`Interlining is cut on the stitch line, without allowance: a firm fusible one, or buckram.`,
    words`Cover the long seams inside with bias tape.`,
    ...eyeletNote(marks),
  ],
});

const sideGore = (shape: BallCrownShape, marks: GoreMarks, base: number): Piece => ({
  ...common(shape.side, ['outer']),
  id: 'goreSide',
  name: 'Side gore',
  outline: edgesOf(shape.side),
  notches: [
    { edge: 'bottom', at: base / 2, count: 1, name: 'side' },
    ...turnNotches(shape.side, marks.upright),
    ...visorEnd(2 * base - marks.visorStretch / 2, base),
  ],
  marks: [...eyelet(shape.side, marks), edgeWord('to the front', base)],
  figures: [...marks.figures, wayFigure('side', shape.side, shape)],
  notes: [TIP_NOTE, ...eyeletNote(marks)],
});

const backGore = ({ wholeBack, back }: BallCrownShape, marks: GoreMarks, base: number): Piece => {
  const { y: high } = pathEnd(wholeBack.right);
  const arch: Edge = { name: 'arch', path: back.arch, kind: 'none' };
  const shape = { bottom: back.lower, right: back.right, left: back.seam };
  const [{ y: archHigh }, foot] = [pathStart(back.arch), pathEnd(back.arch)];
  const grain = base * 0.3;
  return {
    ...common(wholeBack, ['outer']),
    id: 'goreBack',
    name: 'Back gore',
    outline: [...edgesOf(shape), arch],
    // Down the centre back seam the opening begins before the turn, unless it is low.
    notches: turnNotches(wholeBack, marks.upright).filter(
      ({ edge, at }) => edge === 'right' || at < pathLength(back.seam),
    ),
    grain: [point(grain, high * 0.08), point(grain, high * 0.42)],
    labelAt: point(0, high * 0.5),
    // Below that the arch may reach across the middle.
    centreLines: [[line(point(0, archHigh), point(0, high))]],
    marks: eyelet(wholeBack, marks),
    dimensions: [
      { name: 'Lower edge', along: back.lower },
      { name: 'Long edge', along: back.right },
      { name: 'Centre back', along: back.seam },
    ],
    figures: [
      ...marks.figures,
      {
        name: 'Lower edge beside the opening',
        formula: 'lower edge of one gore − half the opening width',
        worked: words`${exactMm(base)} − ${exactMm(base / 2 + foot.x)} = ${exactMm(pathLength(back.lower))}`,
      },
      {
        name: 'Centre back seam above the opening',
        formula: 'long edge of the whole gore − opening height',
        worked: words`${exactMm(pathLength(wholeBack.left))} − ${exactMm(pathLength(wholeBack.left) - pathLength(back.seam))} = ${exactMm(pathLength(back.seam))}`,
      },
    ],
    notes: [words`The arch has no allowance: it is bound.`, ...eyeletNote(marks)],
  };
};

const TIP_NOTE: Words = words`Sew the long seams up to the tip’s stitch line, not to the cut edge.`;

const edgesOf = ({ bottom, right, left }: GoreShape): readonly Edge[] => [
  { name: 'bottom', path: bottom, kind: 'lower' },
  { name: 'right', path: right, kind: 'gore' },
  { name: 'left', path: left, kind: 'gore' },
];

const common = ({ bottom, right, left }: GoreShape, cloths: readonly Cloth[]) => {
  const base = pathLength(bottom);
  const tip = pathEnd(right);
  return {
    cuts: cloths.map((cloth) => ({ cloth, count: 2, mirrored: 1 })),
    foldable: false,
    grain: [point(-base * 0.28, tip.y * 0.12), point(-base * 0.28, tip.y * 0.5)],
    centreLines: [[line(point(0, 0), tip)]],
    labelAt: point(base * 0.08, tip.y * 0.34),
    dimensions: [
      { name: 'Lower edge', along: bottom },
      { name: 'Up the middle', along: [line(point(0, 0), tip)] },
      { name: 'Long edge, front', along: right },
      { name: 'Long edge, back', along: left },
    ],
  } as const satisfies Partial<Piece>;
};

/** Where the crown turns in, on both long edges: one level all round. */
const turnNotches = ({ left }: Pick<GoreShape, 'left'>, upright: number): readonly Notch[] => [
  { edge: 'right', at: upright, count: 1, name: TURN },
  { edge: 'left', at: pathLength(left) - upright, count: 1, name: TURN },
];

const TURN = 'turn of the crown';

/** The end of the visor, where it falls on this gore. */
const visorEnd = (at: number, base: number): readonly Notch[] =>
  at >= 0 && at <= base ? [{ edge: 'bottom', at, count: 1, name: 'visor end' }] : [];

const eyelet = ({ right }: GoreShape, { eyelets }: GoreMarks): readonly PieceMark[] =>
  eyelets
    ? [{ kind: 'eyelet', at: point(0, pathEnd(right).y * EYELET_AT), diameter: EYELET, name: 'eyelet' }]
    : [];

const eyeletNote = ({ eyelets }: GoreMarks): readonly Words[] =>
  eyelets ? [words`An eyelet ${mm(EYELET)} wide at the ring.`] : [];

/** Above the lower edge on the right, mm: tells the long edges apart. */
const WORD_AT = 7;

const edgeWord = (text: string, base: number): PieceMark => ({
  kind: 'text',
  text,
  at: point(base * 0.26, WORD_AT),
});

/** How much longer a gore is that stands steeper than the back ones. */
const wayFigure = (name: string, { right }: GoreShape, { wholeBack }: BallCrownShape): Figure => {
  const [round, steep] = [pathEnd(wholeBack.right).y, pathEnd(right).y];
  return {
    name: `Up the middle of a ${name} gore`,
    formula: 'up the middle of a back gore + what standing steeper takes',
    worked: words`${exactMm(round)} + ${exactMm(steep - round)} = ${exactMm(steep)}`,
  };
};

/** Tape over the long seams inside: two joining the front to the sides, two behind, one over the middle from front to back. */
const tapeFigure = ({ front, side, back }: BallCrownShape): Figure => {
  const [ahead, behind] = [pathLength(side.right), pathLength(side.left)];
  const over = pathLength(front.right) + pathLength(back.seam);
  return {
    name: 'Seams to tape inside',
    formula: 'two seams before the sides + two behind + the one over the middle',
    worked: words`${count(2)} × ${exactMm(ahead)} + ${count(2)} × ${exactMm(behind)} + ${exactMm(over)} = ${exactMm(2 * (ahead + behind) + over)}`,
  };
};
