import { developStrip } from '../../../geometry/develop-strip.ts';
import { type Oval, ovalPoint } from '../../../geometry/oval.ts';
import { offOval } from '../../../geometry/oval-slope.ts';
import type { Path } from '../../../geometry/path.ts';
import { point } from '../../../geometry/point.ts';
import { distance3, type Point3, point3 } from '../../../geometry/space.ts';
import { rotated, translated } from '../../../geometry/transform.ts';
import type { TriangleStrip } from '../../../geometry/triangle-strip.ts';
import { triangulateStrip } from '../../../geometry/triangulate-strip.ts';
import { dropOf, type End, reachOf, type SideSlope } from './side-slope.ts';

/** A point of a rim that stands higher in front than behind by a tilt (mm), its middle at height 0. */
export const tiltedPoint = (rim: Oval, tilt: number, angle: number): Point3 => {
  const { x, y } = ovalPoint(rim, angle);
  const sine = tilt / (2 * rim.halfLength);
  return point3(x, y * Math.sqrt(1 - sine * sine), y * sine);
};

/** The longest step along the rim, mm: see developStrip for how near to the true development it leads. */
const STEP = 3.5;

/** One quarter or two of a side band, from the centre front or back, going round counter-clockwise as seen from above. */
interface Stretch {
  readonly from: End;
  readonly quarters: 1 | 2;
}

/**
 * A stretch of the side band in space: left rail the rim, its middle at height 0, right rail the lower edge. The rulings
 * are chosen: under a tilted rim they are not those that look level from above.
 */
export const tiltedStrip = (slope: SideSlope, { from, quarters }: Stretch): TriangleStrip => {
  const { rim, tilt, plan, rimGirth } = slope;
  const start = from === 'front' ? Math.PI / 2 : -Math.PI / 2;
  const count = Math.max(16, Math.ceil(rimGirth / 4 / STEP)) * quarters;
  const [reach, drop] = [reachOf(slope), dropOf(slope)];
  const angles = Array.from({ length: count + 1 }, (_, i) => start + ((Math.PI / 2) * quarters * i) / count);
  return triangulateStrip(
    angles.map((t) => tiltedPoint(rim, tilt, t)),
    angles.map((t) => offOval(plan, t, -reach, drop)),
  );
};

/**
 * Both edges of a stretch left to right, rolled flat with the ruling at its start upright on x = 0 and its foot on the
 * origin. At the centre front and back they meet the ruling square, so that a mirror image can be joined there.
 */
export const tiltedEdges = (
  slope: SideSlope,
  stretch: Stretch,
): { readonly top: Path; readonly bottom: Path } => {
  const strip = tiltedStrip(slope, stretch);
  const square = stretch.quarters === 2 ? (['start', 'end'] as const) : (['start'] as const);
  const { left, right } = developStrip(strip, { square });
  const height = distance3(strip.left[0]!, strip.right[0]!);
  const stand = (path: Path) => translated(rotated(path, -Math.PI / 2), point(0, height));
  return { top: stand(left), bottom: stand(right) };
};
