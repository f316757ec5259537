import { pathLength } from '../../../geometry/measure.ts';
import { type Oval, ovalOfGirth } from '../../../geometry/oval.ts';
import { notchesToMeet, type Side } from '../../../pattern/chain.ts';
import type { Figure, Piece } from '../../../pattern/piece.ts';
import { exactMm, mm, radians, ratio, words } from '../../../words.ts';
import type { Head, InsertFit } from '../../style.ts';
import { type VisorValues, visorParameters } from './parameters.ts';
import { stiffener, visor, visorInside, visorMoved } from './visor.ts';
import { fitInsert, insertShape } from './visor-insert.ts';
import { type VisorShape, visorShape } from './visor-shape.ts';
import { movedOut, turnFigures, upperWish, visorTurn } from './visor-turn.ts';

export interface VisorParts {
  readonly pieces: readonly Piece[];
  /** The stretch of band or crown that the cover is sewn to, as measured on the cover. */
  readonly stretch: number;
  readonly depth: number;
  /** How much further out the edge of the upper cover stands than that of the under one, mm; 0 where they are one piece. */
  readonly turn: number;
  /** Of the under cover's outer edge to the upper one's, less 1: stated by the seam between them. */
  readonly edgeEase: number;
  readonly insert: InsertFit | null;
}

/**
 * The visor of some values on the opening of a cap: drafted, or a cover for a bought insert, or none.
 * While another slider moves, the visor stays: the last one is kept.
 */
export const visorParts = (values: VisorValues, opening: Head): VisorParts => {
  if (values.visorSource === 'none') return noVisor;
  const asked = [
    ...Object.keys(visorParameters).map((key) => values[key as keyof VisorValues]),
    opening.girth,
    opening.ratio,
    visorTurn(opening),
  ];
  if (last === null || asked.some((value, i) => value !== last?.asked[i])) {
    const oval = ovalOfGirth(opening.girth, opening.ratio);
    last = {
      asked,
      parts: (values.visorSource === 'insert' ? insertParts : draftedParts)(values, oval, visorTurn(opening)),
    };
  }
  return last.parts;
};

const noVisor: VisorParts = { pieces: [], stretch: 0, depth: 0, turn: 0, edgeEase: 0, insert: null };
let last: { readonly asked: readonly unknown[]; readonly parts: VisorParts } | null = null;

/** One cover for above and below, or two where the cloth has a thickness. */
const covers = (
  under: VisorShape,
  upper: VisorShape,
  turn: number,
  figures: readonly Figure[],
): Pick<VisorParts, 'pieces' | 'turn' | 'edgeEase'> => {
  if (turn === 0) return { pieces: [visor({ shape: under, figures })], turn, edgeEase: 0 };
  const larger = turnFigures(turn, upper, under);
  return {
    pieces: [
      visor({ shape: upper, figures: [...figures, ...larger], side: 'upper' }),
      visor({ shape: under, figures, side: 'under' }),
    ],
    turn,
    edgeEase: pathLength(under.outer) / pathLength(upper.outer) - 1,
  };
};

const draftedParts = (values: VisorValues, opening: Oval, turn: number): VisorParts => {
  const wish = {
    opening,
    innerEdge: values.visorLength,
    depth: values.visorDepth,
    drop: values.visorDrop,
    fullness: values.visorFullness,
    tipRounding: values.visorTipRounding,
  };
  const shape = visorShape(wish);
  const { pieces, ...edge } = covers(
    shape,
    turn === 0 ? shape : visorShape(upperWish(wish, turn)),
    turn,
    draftedFigures(values, opening),
  );
  return {
    pieces: [...pieces, stiffener(shape, values.stiffenerClearance)],
    stretch: pathLength(shape.inner),
    depth: values.visorDepth,
    ...edge,
    insert: null,
  };
};

const draftedFigures = (values: VisorValues, opening: Oval): readonly Figure[] => {
  const { halfLength: a, halfBreadth: b } = opening;
  const front = (b * b) / a;
  return [
    {
      name: 'Radius of the head’s oval at the front',
      formula: 'half breadth² ÷ half length',
      worked: words`(${exactMm(b)})² ÷ ${exactMm(a)} = ${exactMm(front)}`,
    },
    {
      name: 'Flat radius of the inner edge at the centre',
      formula: 'front radius ÷ cosine of the drop',
      worked: words`${exactMm(front)} ÷ cos ${radians(values.visorDrop)} = ${exactMm(front / Math.cos(values.visorDrop))}`,
    },
    {
      name: 'Head breadth by length',
      formula: 'breadth ÷ length, 80 % unless measured',
      worked: words`${exactMm(2 * b)} ÷ ${exactMm(2 * a)} = ${ratio(b / a)}`,
    },
  ];
};

const insertParts = (values: VisorValues, opening: Oval, turn: number): VisorParts => {
  const insert = {
    width: values.insertWidth,
    depth: values.insertDepth,
    bow: values.insertBow,
    widths: values.insertWidths,
  };
  const own = insertShape(insert);
  const cover = visorMoved(own, values.stiffenerClearance);
  const fit = fitInsert(insert, cover, opening);
  const figures: readonly Figure[] = [
    {
      name: 'Inner edge of the cover',
      formula: 'inner edge of the insert, moved out by the clearance',
      worked: words`${exactMm(fit.innerEdge)}, ${exactMm(values.stiffenerClearance)} further out = ${exactMm(fit.stretch)}`,
    },
  ];
  const check: Piece = {
    ...visorInside({
      id: 'stiffener',
      name: 'Insert outline',
      cuts: [],
      shape: own,
      notes: [words`Lay the bought insert on this to see that it was measured well.`],
    }),
    notions: [{ name: 'The visor insert you measured', size: words`${mm(insert.width)} from tip to tip` }],
  };
  const { pieces, ...edge } = covers(cover, turn === 0 ? cover : movedOut(cover, turn), turn, figures);
  return {
    pieces: [...pieces, check],
    stretch: fit.stretch,
    depth: values.insertWidths[0] ?? values.insertDepth,
    ...edge,
    insert: fit,
  };
};

/** The same visor with the notches that the stretch it is sewn to has: front seams, middles of gores. */
export const visorMeeting = (visor: VisorParts, front: Side): VisorParts => ({
  ...visor,
  pieces: visor.pieces.map((piece) =>
    piece.id === 'visor' || piece.id === 'visorUnder'
      ? {
          ...piece,
          notches: [
            ...piece.notches.filter(({ edge }) => edge !== 'inner'),
            ...notchesToMeet('inner', front),
          ],
        }
      : piece,
  ),
});
