import { type Oval, ovalPoint } from '../../../geometry/oval.ts';
import { point3 } from '../../../geometry/space.ts';
import type { Strip } from '../../../geometry/strip.ts';
import type { FormStrip } from '../../form.ts';
import { reachOf, type SideSlope, sideBandStrip } from '../side-band/side-band-shape.ts';

const QUARTER = Math.PI / 2;
const HALF_STEPS = 64;

/** A level flat top at some height, mm: from its back to its front between the two halves of its edge. */
export const tipStrip = (rim: Oval, height: number): Strip => {
  const angles = Array.from({ length: HALF_STEPS + 1 }, (_, i) => -QUARTER + (i * Math.PI) / HALF_STEPS);
  const at = (side: 1 | -1) =>
    angles.map((t) => {
      const p = ovalPoint(rim, t);
      return point3(side * p.x, p.y, height);
    });
  return { left: at(-1), right: at(1) };
};

/** How far the side band's lower edge lies below the rim, mm. */
export const dropOf = (slope: SideSlope): number => Math.sqrt(slope.height ** 2 - reachOf(slope) ** 2);

/** The side band's pieces as they stand, the rim at some height (mm), going round from the centre back to the wearer's right. */
export const sideBandStrips = (slope: SideSlope, pieces: '2' | '4', height: number): readonly FormStrip[] => {
  const raised = (from: number, to: number): Strip => {
    const { left, right } = sideBandStrip(slope, from, to);
    const up = (points: Strip['left']) => points.map((p) => point3(p.x, p.y, p.z + height));
    return { left: up(left), right: up(right) };
  };
  if (pieces === '2') {
    return [
      { piece: 'sideBandFront', copy: 0, strip: raised(0, Math.PI) },
      { piece: 'sideBandBack', copy: 0, strip: raised(Math.PI, 2 * Math.PI) },
    ];
  }
  return [0, 1, 2, 3].map((copy) => ({
    piece: 'sideBand',
    copy,
    strip: raised(-QUARTER + copy * QUARTER, copy * QUARTER),
  }));
};
