import type { Point } from '../geometry/point.ts';
import type { Point3 } from '../geometry/space.ts';

/**
 * One copy of a piece in space, or a part of it, as a net of rulings: row after row across the strip, from its left rail to
 * its right. Every knot of the net knows where it lies on the flat piece: that is its place on the cloth.
 */
export interface Sheet {
  readonly piece: string;
  readonly copy: number;
  /** Its other face is seen too: a visor, a brim. */
  readonly open: boolean;
  /** As near as its measures tell: the piece is not rolled out from it. */
  readonly likeness: boolean;
  /** A button or an eyelet lying on the cloth, from its middle at the left rail to its rim. */
  readonly disc?: 'button' | 'eyelet';
  readonly rows: number;
  readonly columns: number;
  /** mm in space, three numbers a knot. */
  readonly at: Float64Array;
  /** mm on the flat piece, two numbers a knot. */
  readonly flat: Float64Array;
}

export const knotCount = ({ rows, columns }: Sheet): number => rows * columns;

export const knotAt = ({ at }: Sheet, knot: number): Point3 => ({
  x: at[3 * knot]!,
  y: at[3 * knot + 1]!,
  z: at[3 * knot + 2]!,
});

/** The corners of the triangles of a net, three knots each, counter-clockwise as the strip is seen from outside. Slivers without area are left out. */
export const trianglesIn = ({ rows, columns, at }: Sheet): readonly number[] => {
  const corners: number[] = [];
  const apart = (p: number, q: number) =>
    at[3 * p] !== at[3 * q] || at[3 * p + 1] !== at[3 * q + 1] || at[3 * p + 2] !== at[3 * q + 2];
  const add = (p: number, q: number, r: number) => {
    if (apart(p, q) && apart(q, r) && apart(r, p)) corners.push(p, q, r);
  };
  for (let i = 0; i + 1 < rows; i++) {
    for (let j = 0; j + 1 < columns; j++) {
      const [l, r] = [i * columns + j, i * columns + j + 1];
      add(l, r, l + columns);
      add(r, r + columns, l + columns);
    }
  }
  return corners;
};

/** The knots round the edge: along the first ruling, up the right rail, back along the last ruling and down the left rail. */
export const edgeKnots = ({ rows, columns }: Sheet): readonly number[] => {
  const round: number[] = [];
  const last = columns - 1;
  for (let j = 0; j < last; j++) round.push(j);
  for (let i = 0; i < rows - 1; i++) round.push(i * columns + last);
  for (let j = last; j > 0; j--) round.push((rows - 1) * columns + j);
  for (let i = rows - 1; i > 0; i--) round.push(i * columns);
  return round;
};

/** Where a knot lies on the flat piece. */
export const flatAt = ({ flat }: Sheet, knot: number): Point => ({
  x: flat[2 * knot]!,
  y: flat[2 * knot + 1]!,
});
