import { pathLength } from '../../../geometry/measure.ts';
import { type Oval, ovalOfGirth } from '../../../geometry/oval.ts';
import { notchesToMeet, type Side } from '../../../pattern/chain.ts';
import type { Figure, Piece } from '../../../pattern/piece.ts';
import { exactMm, radians, ratio, words } from '../../../words.ts';
import type { Head, InsertFit } from '../../style.ts';
import { type VisorValues, visorParameters } from './parameters.ts';
import { stiffener, visor, visorInside, visorMoved } from './visor.ts';
import { fitInsert, insertShape } from './visor-insert.ts';
import { visorShape } from './visor-shape.ts';

export interface VisorParts {
  readonly pieces: readonly Piece[];
  /** The stretch of band or crown that the cover is sewn to, as measured on the cover. */
  readonly stretch: number;
  readonly depth: number;
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
  ];
  if (last === null || asked.some((value, i) => value !== last?.asked[i])) {
    const oval = ovalOfGirth(opening.girth, opening.ratio);
    last = {
      asked,
      parts: values.visorSource === 'insert' ? insertParts(values, oval) : draftedParts(values, oval),
    };
  }
  return last.parts;
};

const noVisor: VisorParts = { pieces: [], stretch: 0, depth: 0, insert: null };
let last: { readonly asked: readonly unknown[]; readonly parts: VisorParts } | null = null;

const draftedParts = (values: VisorValues, opening: Oval): VisorParts => {
  const shape = visorShape({
    opening,
    innerEdge: values.visorLength,
    depth: values.visorDepth,
    drop: values.visorDrop,
    fullness: values.visorFullness,
    tipRounding: values.visorTipRounding,
  });
  const { halfLength: a, halfBreadth: b } = opening;
  const front = (b * b) / a;
  const figures: readonly Figure[] = [
    {
      name: 'Radius of the head’s oval at the front',
      formula: 'half breadth² ÷ half length',
      worked: words`${exactMm(b)}² ÷ ${exactMm(a)} = ${exactMm(front)}`,
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
  return {
    pieces: [visor({ shape, figures }), stiffener(shape, values.stiffenerClearance)],
    stretch: pathLength(shape.inner),
    depth: values.visorDepth,
    insert: null,
  };
};

const insertParts = (values: VisorValues, opening: Oval): VisorParts => {
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
  const check = visorInside({
    id: 'stiffener',
    name: 'Insert outline',
    cuts: [],
    shape: own,
    notes: [words`Lay the bought insert on this to see that it was measured well.`],
  });
  return {
    pieces: [visor({ shape: cover, figures }), check],
    stretch: fit.stretch,
    depth: values.insertWidths[0] ?? values.insertDepth,
    insert: fit,
  };
};

/** The same visor with the notches that the stretch it is sewn to has: front seams, middles of gores. */
export const visorMeeting = (visor: VisorParts, front: Side): VisorParts => ({
  ...visor,
  pieces: visor.pieces.map((piece) =>
    piece.id === 'visor'
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
