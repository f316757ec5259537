import { pathLength, pointAt } from '../../../geometry/measure.ts';
import { line } from '../../../geometry/path.ts';
import { distance, type Point, point } from '../../../geometry/point.ts';
import type { Notch, Piece } from '../../../pattern/piece.ts';
import type { SideBandShape } from './side-band-shape.ts';
import type { SideSlope } from './side-slope.ts';

export const middleNotches = (shape: SideBandShape, name: string, count: 1 | 2): readonly Notch[] => [
  { edge: 'bottom', at: pathLength(shape.bottom) / 2, count, name },
  { edge: 'top', at: pathLength(shape.top) / 2, count, name },
];

/** The feet and heads of a line up the piece, a fraction of the way from its left end to its right. */
const uprightAt = (shape: SideBandShape, fraction: number) => ({
  low: pointAt(shape.bottom, pathLength(shape.bottom) * fraction),
  high: pointAt(shape.top, pathLength(shape.top) * (1 - fraction)),
});

/** A point half-way up the piece, a fraction of the way from its left end to its right. */
export const halfWayUp = (shape: SideBandShape, fraction: number): Point => {
  const { low, high } = uprightAt(shape, fraction);
  return point((low.x + high.x) / 2, (low.y + high.y) / 2);
};

/** What every side band piece has: its edges, grain, centre line and measures. */
export const shapedPiece = (shape: SideBandShape, slope: SideSlope) => {
  const middle = halfWayUp(shape, 0.5);
  const grainFoot = halfWayUp(shape, 0.16);
  const { low, high } = uprightAt(shape, 0.16);
  const reach = (slope.tilt === 0 ? slope.height : distance(low, high)) * 0.33;
  const upright = line(
    pointAt(shape.bottom, pathLength(shape.bottom) / 2),
    pointAt(shape.top, pathLength(shape.top) / 2),
  );
  return {
    outline: [
      { name: 'bottom', path: shape.bottom, kind: 'band' },
      { name: 'right', path: shape.right, kind: 'side' },
      { name: 'top', path: shape.top, kind: 'crown' },
      { name: 'left', path: shape.left, kind: 'side' },
    ],
    grain: [point(grainFoot.x, grainFoot.y - reach), point(grainFoot.x, grainFoot.y + reach)],
    centreLines: [[upright]],
    labelAt: point(middle.x + pathLength(shape.bottom) * 0.12, middle.y),
    dimensions: [
      { name: 'Height', along: shape.right },
      { name: 'Top edge', along: shape.top },
      { name: 'Bottom edge', along: shape.bottom },
    ],
  } as const satisfies Partial<Piece>;
};
