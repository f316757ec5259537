import { pathLength, reversed } from '../../../geometry/measure.ts';
import { offsetOutline } from '../../../geometry/offset.ts';
import { line, type Path, pathStart } from '../../../geometry/path.ts';
import { point } from '../../../geometry/point.ts';
import { wholeEdge } from '../../../geometry/whole-edge.ts';
import type { Cut, Figure, Piece } from '../../../pattern/piece.ts';
import { exactMm, type Words, words } from '../../../words.ts';
import type { VisorShape } from './visor-shape.ts';

interface VisorPieceWish {
  readonly shape: VisorShape;
  readonly figures: readonly Figure[];
  /** The same above and below, or the upper or the under one of two. */
  readonly side?: 'both' | 'upper' | 'under';
}

const COVERS = {
  both: { id: 'visor', name: 'Visor', outer: 2, interlined: true },
  upper: { id: 'visor', name: 'Visor, upper', outer: 1, interlined: true },
  under: { id: 'visorUnder', name: 'Visor, under', outer: 1, interlined: false },
} as const;

/** From the middle of a symmetric edge on. */
const onFromMiddle = (edge: Path): Path => edge.slice(edge.length / 2);

/** Foot of the centre line: where the outer edge crosses x = 0. */
const frontOf = (shape: VisorShape) => pathStart(onFromMiddle(shape.outer));
const heelOf = (shape: VisorShape) => pathStart(onFromMiddle(shape.inner));

/** The visor's cover, front downwards. */
export const visor = ({ shape, figures, side = 'both' }: VisorPieceWish): Piece => {
  const { id, name, outer, interlined } = COVERS[side];
  const [heel, front] = [heelOf(shape), frontOf(shape)];
  const inner = pathLength(shape.inner);
  return {
    ...common(shape),
    id,
    name,
    cuts: [
      { cloth: 'outer', count: outer },
      ...(interlined ? [{ cloth: 'interlining', count: 1 } as const] : []),
    ],
    outline: [
      { name: 'outer', path: shape.outer, kind: 'visorEdge' },
      { name: 'inner', path: shape.inner, kind: 'lower' },
    ],
    foldable: true,
    notches: [
      { edge: 'inner', at: inner / 2, count: 1, name: 'centre front' },
      { edge: 'outer', at: pathLength(shape.outer) / 2, count: 1, name: 'centre front' },
    ],
    dimensions: [
      { name: 'Depth', along: [line(heel, front)] },
      { name: 'Inner edge', along: shape.inner },
    ],
    figures,
    notes: interlined ? [words`Interlining is cut on the stitch line, without allowance.`] : [],
  };
};

interface StiffenerWish {
  readonly id: string;
  readonly name: string;
  readonly cuts: readonly Cut[];
  readonly shape: VisorShape;
  readonly notes: readonly Words[];
}

/** A piece cut on its own line, to go inside the visor's cover. */
export const visorInside = ({ id, name, cuts, shape, notes }: StiffenerWish): Piece => ({
  ...common(shape),
  id,
  name,
  cuts,
  outline: [
    { name: 'outer', path: shape.outer, kind: 'none' },
    { name: 'inner', path: shape.inner, kind: 'none' },
  ],
  foldable: false,
  notches: [],
  dimensions: [
    { name: 'Depth', along: [line(heelOf(shape), frontOf(shape))] },
    { name: 'Inner edge', along: shape.inner },
  ],
  figures: [],
  notes,
});

/**
 * A visor's shape moved in (by < 0) or out (by > 0) all round, mm; as symmetric as it was, for only its right half is moved.
 * In place of the left one a block runs straight on from it.
 */
export const visorMoved = (shape: VisorShape, by: number): VisorShape => {
  const [heel, front] = [heelOf(shape), frontOf(shape)];
  const x = heel.x - 1 - 2 * Math.abs(by);
  const block = [
    line(heel, point(x, heel.y)),
    line(point(x, heel.y), point(x, front.y)),
    line(point(x, front.y), front),
  ];
  const [outer, inner] = offsetOutline([
    { path: onFromMiddle(shape.outer), by },
    { path: shape.inner.slice(0, shape.inner.length / 2), by },
    { path: block, by },
  ]);
  return { outer: wholeEdge(outer!), inner: reversed(wholeEdge(reversed(inner!))) };
};

/** The stiffener: the visor's cover less its clearance. */
export const stiffener = (cover: VisorShape, clearance: number): Piece =>
  visorInside({
    id: 'stiffener',
    name: 'Visor stiffener',
    cuts: [{ cloth: 'stiffener', count: 1 }],
    shape: visorMoved(cover, -clearance),
    notes: [
      words`No allowance: smaller than the cover by ${exactMm(clearance)} all round.`,
      words`Stitch beside the stiffener, not through it.`,
    ],
  });

const common = (shape: VisorShape) => {
  const [heel, front] = [heelOf(shape), frontOf(shape)];
  const depth = heel.y - front.y;
  const x = pathLength(shape.inner) * 0.24;
  return {
    grain: [point(-x, heel.y - depth * 0.2), point(-x, heel.y - depth * 0.7)],
    centreLines: [[line(heel, front)]],
    marks: [],
    labelAt: point(0, heel.y - depth * 0.5),
  } as const satisfies Partial<Piece>;
};
