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

/**
 * A quarter of the side band in space, from the centre front to the wearer's left side or from the centre back to the
 * right one: left rail the rim, its middle at height 0, right rail the lower edge. The rulings are chosen: under a
 * tilted rim they are not those that look level from above.
 */
export const quarterStrip = (slope: SideSlope, end: End): TriangleStrip => {
  const { rim, tilt, plan, rimGirth } = slope;
  const from = end === 'front' ? Math.PI / 2 : -Math.PI / 2;
  const count = Math.max(16, Math.ceil(rimGirth / 4 / STEP));
  const [reach, drop] = [reachOf(slope), dropOf(slope)];
  const angles = Array.from({ length: count + 1 }, (_, i) => from + ((Math.PI / 2) * i) / count);
  return triangulateStrip(
    angles.map((t) => tiltedPoint(rim, tilt, t)),
    angles.map((t) => offOval(plan, t, -reach, drop)),
  );
};

/**
 * Both edges of that quarter left to right, rolled flat with the ruling at the centre upright on x = 0 and its foot on
 * the origin. Both meet that ruling square, so that a half can be made of the quarter and its mirror image.
 */
export const tiltedQuarter = (slope: SideSlope, end: End): { readonly top: Path; readonly bottom: Path } => {
  const strip = quarterStrip(slope, end);
  const { left, right } = developStrip(strip, { square: ['start'] });
  const height = distance3(strip.left[0]!, strip.right[0]!);
  const stand = (path: Path) => translated(rotated(path, -Math.PI / 2), point(0, height));
  return { top: stand(left), bottom: stand(right) };
};
