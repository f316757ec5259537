import { pathStart } from '../../../geometry/path.ts';
import { type Point3, point3 } from '../../../geometry/space.ts';
import type { FormStrip } from '../../form.ts';
import { goreRail } from './gore-rail.ts';
import type { GoreReach } from './gore-reach.ts';
import { type FrontSeam, type GoreCopy, goreAngle, goreAtBack } from './gored-crown.ts';

interface CrownForm {
  readonly gores: number;
  readonly frontSeam: FrontSeam;
  readonly reach: GoreReach;
}

/** So many copies of one gore, from the centre back round. */
export const goreCopies = (gores: number): readonly GoreCopy[] =>
  Array.from({ length: gores }, (_, copy) => ({ piece: 'gore', copy }));

/** The gores as they stand, their lower edge at some height, mm. */
export const goreStrips = (
  { gores, frontSeam, reach }: CrownForm,
  copies: readonly GoreCopy[],
  level: number,
): readonly FormStrip[] => {
  const rail = goreRail(reach);
  const half = Math.PI / gores;
  const seam = (angle: number): readonly Point3[] => {
    const [x, y] = [Math.cos(angle) / Math.cos(half), Math.sin(angle) / Math.cos(half)];
    return rail.map((at) => point3(at.reach * x, at.reach * y, level + at.height));
  };
  return copies.map((copy, i) => {
    const middle = goreAngle(i, gores, frontSeam);
    return { ...copy, strip: { left: seam(middle - half), right: seam(middle + half) } };
  });
};

/** The polygon that the lower edge of the crown makes, level at 0, from the centre back round to it again. */
export const goreLowerEdge = ({ gores, frontSeam, reach }: CrownForm): readonly Point3[] => {
  const half = Math.PI / gores;
  const apothem = pathStart(reach).x;
  const corner = (i: number) => {
    const angle = goreAngle(i, gores, frontSeam) - half;
    const r = apothem / Math.cos(half);
    return point3(r * Math.cos(angle), r * Math.sin(angle), 0);
  };
  const corners = Array.from({ length: gores + 1 }, (_, i) => corner(i));
  if (!goreAtBack(gores, frontSeam)) return corners;
  const middle = point3(0, -apothem, 0);
  return [middle, ...corners.slice(1), middle];
};

/**
 * How far in front of the axis a visor is to stand, mm: on the circle within the polygon, so that the crown covers its
 * inner edge and no gap is seen.
 */
export const goreFront = (reach: GoreReach): number => pathStart(reach).x;

/** How high the middle of the crown stands above its lower edge, mm. */
export const goreHeight = (reach: GoreReach): number => goreRail(reach).at(-1)!.height;
