import type { Box } from '../../../geometry/box.ts';
import { clipToBox } from '../../../geometry/clip.ts';
import { pathLength, pointAt, reversed } from '../../../geometry/measure.ts';
import { offsetOutline } from '../../../geometry/offset.ts';
import { line, type Path } from '../../../geometry/path.ts';
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

/** Foot of the centre line: where the outer edge crosses x = 0. */
const frontOf = (shape: VisorShape) => pointAt(shape.outer, pathLength(shape.outer) / 2);
const heelOf = (shape: VisorShape) => pointAt(shape.inner, pathLength(shape.inner) / 2);

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

/** A visor's shape moved in (by < 0) or out (by > 0) all round, mm; as symmetric as it was. */
export const visorMoved = (shape: VisorShape, by: number): VisorShape => {
  const [outer, inner] = offsetOutline([
    { path: shape.outer, by },
    { path: shape.inner, by },
  ]);
  // A corner is given to one of its two edges: taking the right half twice gives both tips the same one.
  return { outer: wholeEdge(rightHalf(outer!)), inner: reversed(wholeEdge(reversed(rightHalf(inner!)))) };
};

const FAR = 1e4;
const RIGHT: Box = { min: point(0, -FAR), max: point(FAR, FAR) };

const rightHalf = (path: Path): Path => clipToBox(path, RIGHT).flat();

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
    grain: [point(-x, heel.y - depth * 0.2), point(-x, heel.y - depth * 0.8)],
    centreLines: [[line(heel, front)]],
    marks: [],
    labelAt: point(0, heel.y - depth * 0.5),
  } as const satisfies Partial<Piece>;
};
