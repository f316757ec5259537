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
  /** Lies within the shell: only its inside is seen. */
  readonly lining?: true;
  /** A button or an eyelet lying on the cloth, from its middle at the left rail to its rim. */
  readonly disc?: 'button' | 'eyelet';
  readonly rows: number;
  readonly columns: number;
  /**
   * So many knots more stand between two columns on the first ruling, and on the last, which are edges and may be bent: those of
   * the first ruling follow the knots of the net, then come those of the last.
   */
  readonly finer: readonly [number, number];
  /** mm in space, three numbers a knot. */
  readonly at: Float64Array;
  /** mm on the flat piece, two numbers a knot. */
  readonly flat: Float64Array;
}

/** No edge of a net is finer than the net. */
export const NO_FINER = [0, 0] as const;

export const knotCount = ({ rows, columns, finer: [first, last] }: Sheet): number =>
  rows * columns + (columns - 1) * (first + last);

/** The knots of the first ruling or the last one, from the left rail to the right. */
export const endKnots = ({ rows, columns, finer }: Sheet, end: 0 | 1): number[] => {
  const [foot, more] = [end * (rows - 1) * columns, finer[end]];
  let next = rows * columns + end * (columns - 1) * finer[0];
  const knots = [foot];
  for (let j = 1; j < columns; j++) {
    for (let n = 0; n < more; n++) knots.push(next++);
    knots.push(foot + j);
  }
  return knots;
};

export const knotAt = ({ at }: Sheet, knot: number): Point3 => ({
  x: at[3 * knot]!,
  y: at[3 * knot + 1]!,
  z: at[3 * knot + 2]!,
});

/** The corners of the triangles of a net, three knots each, counter-clockwise as the strip is seen from outside. Slivers without area are left out. */
export const trianglesIn = (sheet: Sheet): readonly number[] => {
  const { rows, columns, finer, at } = sheet;
  const corners: number[] = [];
  const apart = (p: number, q: number) =>
    at[3 * p] !== at[3 * q] || at[3 * p + 1] !== at[3 * q + 1] || at[3 * p + 2] !== at[3 * q + 2];
  const add = (p: number, q: number, r: number) => {
    if (apart(p, q) && apart(q, r) && apart(r, p)) corners.push(p, q, r);
  };
  const [first, last] = [endKnots(sheet, 0), endKnots(sheet, 1)];
  for (let i = 0; i + 1 < rows; i++) {
    for (let j = 0; j + 1 < columns; j++) {
      const [l, r] = [i * columns + j, i * columns + j + 1];
      const [from, to] = [i === 0 ? finer[0] + 1 : 1, i === rows - 2 ? finer[1] + 1 : 1];
      for (let n = 0; n < from; n++) {
        const [p, q] = from === 1 ? [l, r] : [first[j * from + n]!, first[j * from + n + 1]!];
        add(p, q, l + columns);
      }
      for (let n = 0; n < to; n++) {
        const [p, q] = to === 1 ? [l + columns, r + columns] : [last[j * to + n]!, last[j * to + n + 1]!];
        add(r, q, p);
      }
    }
  }
  return corners;
};

/** The knots round the edge: along the first ruling, up the right rail, back along the last ruling and down the left rail. */
export const edgeKnots = (sheet: Sheet): readonly number[] => {
  const { rows, columns } = sheet;
  const round = endKnots(sheet, 0).slice(0, -1);
  const last = columns - 1;
  for (let i = 0; i < rows - 1; i++) round.push(i * columns + last);
  round.push(...endKnots(sheet, 1).slice(1).reverse());
  for (let i = rows - 1; i > 0; i--) round.push(i * columns);
  return round;
};

/** Where a knot lies on the flat piece. */
export const flatAt = ({ flat }: Sheet, knot: number): Point => ({
  x: flat[2 * knot]!,
  y: flat[2 * knot + 1]!,
});
