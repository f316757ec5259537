import { cubic, line, type Path } from '../../../geometry/path.ts';
import { point } from '../../../geometry/point.ts';

/**
 * How far the middle of a gore is from the crown's axis (x, mm, level) by the way up it from the lower edge (y, mm along the
 * cloth, ascending). Its slope |dx/dy| is at most 1, which is level; it ends on the axis with slope −1, so that the crown
 * is flat in the middle.
 */
export type GoreReach = Path;

/** What a gored crown is wished to be: girths and lengths in mm, on the stitch line. */
export interface CrownWish {
  readonly gores: number;
  /** Round the lower edge. */
  readonly girth: number;
  /** From the lower edge up the middle of a gore to the middle of the crown. */
  readonly length: number;
  /** How much further round the crown is at its widest. */
  readonly fullness: number;
  /** The widest place, as a part of the length. */
  readonly widest: number;
}

/** Half the width of a gore over its distance from the axis: the sections are regular polygons about circles. */
export const halfWidthPerReach = (gores: number): number => Math.tan(Math.PI / gores);

/** How far the middle of a gore is from the axis where the crown has some girth, mm. */
export const reachOfGirth = (girth: number, gores: number): number =>
  girth / (2 * gores * halfWidthPerReach(gores));

/**
 * A crown that rises square from its edge, bulges as wished, and turns in to lie flat in the middle. Where the way in is
 * as long as a quarter of a circle it is one within 1 % of its radius.
 * The turn is one cubic along the tangents at its ends: it begins upright, and runs straight into the middle, since the
 * edge of a gore has no bend where a smooth crown is flat. Throws a RangeError where the cloth is too short to get there.
 */
export const goreReach = ({ gores, girth, length, fullness, widest }: CrownWish): GoreReach => {
  const [edge, out] = [reachOfGirth(girth, gores), reachOfGirth(girth + fullness, gores)];
  const up = length * widest;
  if (!(up > 0 && length - up > out && out > 0 && edge > 0))
    throw new RangeError(`a crown ${length} mm long does not reach its middle, ${out} mm in`);
  const turn = cubic(
    point(out, up),
    point(out, length - out),
    point(out / 2, length - out / 2),
    point(0, length),
  );
  // Is it no wider anywhere than at its edge? Then it goes straight up.
  const side =
    edge === out
      ? line(point(edge, 0), turn.from)
      : cubic(point(edge, 0), point(edge, up / 3), point(out, (up * 2) / 3), turn.from);
  return [side, turn];
};
