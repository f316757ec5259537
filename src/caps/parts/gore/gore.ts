import { boundsOf } from '../../../geometry/bounds.ts';
import { pathLength } from '../../../geometry/measure.ts';
import { line, type Path, pathEnd, pathStart } from '../../../geometry/path.ts';
import { point } from '../../../geometry/point.ts';
import { mirrored, scaled } from '../../../geometry/transform.ts';
import type { Cloth, Figure, Notch, Piece, SeamKind } from '../../../pattern/piece.ts';
import { count, exactMm, radians, type Words, words } from '../../../words.ts';
import { type LowerPlace, notchesBelow } from '../seams/notches-below.ts';
import { type GoreReach, halfWidthPerReach } from './gore-reach.ts';

/** The three edges of a flat gore, counter-clockwise, upright about x = 0 on y = 0. */
export interface GoreShape {
  readonly bottom: Path;
  /** From the lower edge up to the tip. */
  readonly right: Path;
  /** From the tip down. */
  readonly left: Path;
}

/**
 * A gore rolled flat. In space it is a part of a cylinder whose rulings are level, so that the way up its middle keeps its
 * length and every width is the polygon's side there: exact. Tip angles of all gores together are a full turn where
 * the crown is flat in the middle.
 */
export const goreShape = (reach: GoreReach, gores: number): GoreShape => {
  const right = scaled(reach, halfWidthPerReach(gores), 1);
  const { x } = pathStart(right);
  return { bottom: [line(point(-x, 0), point(x, 0))], right, left: mirrored(right) };
};

export interface GoreWish {
  readonly id: string;
  readonly name: string;
  readonly cloths: readonly Cloth[];
  readonly count: number;
  readonly reach: GoreReach;
  /** How many make the crown. */
  readonly gores: number;
  /** What the lower edge is sewn as. */
  readonly lower: SeamKind;
  /** Where what it is sewn to has seams, in parts of the girth from the centre back, and where all gores of the crown lie. */
  readonly seamsBelow: readonly number[];
  readonly places: readonly LowerPlace[];
  /** What the arithmetic calls the girth of all lower edges. */
  readonly girthName: string;
  readonly figures?: readonly Figure[];
  readonly notes?: readonly Words[];
}

/** One gore, tip upwards: a notch in the middle of its lower edge and one at its widest on either side. */
export const gore = (wish: GoreWish): Piece => {
  const { reach, gores } = wish;
  const { bottom, right, left } = goreShape(reach, gores);
  const tip = pathEnd(right);
  const base = pathLength(bottom);
  const wide = boundsOf(right).max.x;
  const widestAt = pathLength(right.slice(0, 1));
  const notches: readonly Notch[] = [
    { edge: 'bottom', at: base / 2, count: 1, name: 'middle of the gore' },
    { edge: 'right', at: widestAt, count: 1, name: 'widest place' },
    { edge: 'left', at: pathLength(right) - widestAt, count: 1, name: 'widest place' },
  ];
  // Any gore may be sewn in at any place, either end first.
  const lower = { edge: 'bottom', length: base, places: wish.places, symmetric: true, notches };
  const widest = pathStart(right.slice(1)).y;
  // Above the widest place and its measure, where there is still room beside the middle.
  const grainAt = (part: number) => point(-base * 0.2, widest + (tip.y - widest) * part);
  return {
    id: wish.id,
    name: wish.name,
    cuts: wish.cloths.map((cloth) => ({ cloth, count: wish.count })),
    outline: [
      { name: 'bottom', path: bottom, kind: wish.lower },
      { name: 'right', path: right, kind: 'gore' },
      { name: 'left', path: left, kind: 'gore' },
    ],
    foldable: true,
    grain: [grainAt(0.08), grainAt(0.5)],
    notches: [...notches, ...notchesBelow(wish.seamsBelow, lower)],
    centreLines: [[line(point(0, 0), tip)]],
    marks: [],
    labelAt: point(base * 0.1, tip.y * 0.32),
    dimensions: [
      { name: 'Lower edge', along: bottom },
      { name: 'Widest', along: [line(point(-wide, widest), point(wide, widest))] },
      { name: 'Up the middle', along: [line(point(0, 0), tip)] },
      { name: 'Long edge', along: right },
    ],
    figures: [...(wish.figures ?? []), ...figuresOf(base, wide * 2, gores, wish.girthName)],
    notes: [
      ...(wish.notes ?? []),
      words`Sew the long seams up to the tip’s stitch line, not to the cut edge.`,
    ],
  };
};

const figuresOf = (base: number, wide: number, gores: number, girthName: string): readonly Figure[] => [
  {
    name: 'Lower edge of one gore',
    formula: `${girthName} ÷ number of gores`,
    worked: words`${exactMm(base * gores)} ÷ ${count(gores)} = ${exactMm(base)}`,
  },
  {
    name: 'Widest place of one gore',
    formula: 'girth of the crown at its widest ÷ number of gores',
    worked: words`${exactMm(wide * gores)} ÷ ${count(gores)} = ${exactMm(wide)}`,
  },
  {
    name: 'Angle of the tip',
    formula: 'a full turn ÷ number of gores, so that the crown lies flat in the middle',
    worked: words`${radians(2 * Math.PI)} ÷ ${count(gores)} = ${radians((2 * Math.PI) / gores)}`,
  },
];
