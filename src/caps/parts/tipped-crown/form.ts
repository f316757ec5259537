import type { Oval } from '../../../geometry/oval.ts';
import { type Point3, point3 } from '../../../geometry/space.ts';
import type { Strip } from '../../../geometry/strip.ts';
import type { TriangleStrip } from '../../../geometry/triangle-strip.ts';
import type { FormStrip } from '../../form.ts';
import { sideBandStrip } from '../side-band/side-band-shape.ts';
import type { SideBandScheme } from '../side-band/side-band-wish.ts';
import type { SideSlope } from '../side-band/side-slope.ts';
import { tiltedPoint, tiltedStrip } from '../side-band/tilted-strip.ts';

const QUARTER = Math.PI / 2;
const HALF_STEPS = 128;

/** A flat top with its middle at some height, higher in front by a tilt, mm: from its back to its front between the two halves of its edge. */
export const tipStrip = (rim: Oval, height: number, tilt = 0): Strip => {
  const angles = Array.from({ length: HALF_STEPS + 1 }, (_, i) => -QUARTER + (i * Math.PI) / HALF_STEPS);
  const at = (side: 1 | -1) =>
    angles.map((t) => {
      const p = tiltedPoint(rim, tilt, t);
      return point3(side * p.x, p.y, p.z + height);
    });
  return { left: at(-1), right: at(1) };
};

/**
 * The side band's pieces as they stand, the middle of the rim at some height (mm), going round from the centre back to the
 * wearer's right.
 */
export const sideBandStrips = (
  slope: SideSlope,
  scheme: SideBandScheme,
  height: number,
): readonly FormStrip[] => {
  const raised = ({ left, right }: Strip): Strip => {
    const up = (points: Strip['left']) => points.map((p) => point3(p.x, p.y, p.z + height));
    return { left: up(left), right: up(right) };
  };
  const [back, front] = slope.tilt === 0 ? levelQuarters(slope) : tiltedQuarters(slope);
  const [right, left] = [mirrorImage(front), mirrorImage(back)];
  const strips = schemes[scheme]({ back, right, front, left });
  return strips.map((one) => ({ ...one, strip: raised(one.strip) }));
};

type Quarters = Readonly<Record<'back' | 'right' | 'front' | 'left', Strip>>;

/** Which piece each quarter belongs to; in their order they are the back on the wearer's right, the front there, the front on the left and the back there. */
const schemes: Readonly<Record<SideBandScheme, (quarters: Quarters) => readonly FormStrip[]>> = {
  whole: ({ back, right, front, left }) => [
    { piece: 'sideBand', copy: 0, strip: joined(joined(back, right), joined(front, left)) },
  ],
  halves: ({ back, right, front, left }) => [
    { piece: 'sideBandFront', copy: 0, strip: joined(right, front) },
    { piece: 'sideBandBack', copy: 0, strip: joined(left, back) },
  ],
  quarters: ({ back, right, front, left }) =>
    [back, right, front, left].map((strip, copy) => ({ piece: 'sideBand', copy, strip })),
  pairs: ({ back, right, front, left }) => [
    { piece: 'sideBandBack', copy: 0, strip: back },
    { piece: 'sideBandFront', copy: 1, strip: right },
    { piece: 'sideBandFront', copy: 0, strip: front },
    { piece: 'sideBandBack', copy: 1, strip: left },
  ],
};

/** From the centre back to the wearer's right side, and from the centre front to the left side. */
const levelQuarters = (slope: SideSlope): readonly [Strip, Strip] => [
  sideBandStrip(slope, -QUARTER, 0),
  sideBandStrip(slope, QUARTER, 2 * QUARTER),
];

const tiltedQuarters = (slope: SideSlope): readonly [Strip, Strip] => [
  rulingsOf(tiltedStrip(slope, { from: 'back', quarters: 1 })),
  rulingsOf(tiltedStrip(slope, { from: 'front', quarters: 1 })),
];

/** The rulings of a strip of triangles, in their order: where one rail is gone along, the other stands still. */
const rulingsOf = ({ left, right, steps }: TriangleStrip): Strip => {
  let [i, j] = [0, 0];
  const rails: { left: Point3[]; right: Point3[] } = { left: [left[0]!], right: [right[0]!] };
  for (const side of steps) {
    if (side === 'left') i++;
    else j++;
    rails.left.push(left[i]!);
    rails.right.push(right[j]!);
  }
  return rails;
};

/** The other side of the cap, so that the strip still goes round counter-clockwise. */
const mirrorImage = ({ left, right }: Strip): Strip => {
  const other = (points: Strip['left']) => points.map((p) => point3(0 - p.x, p.y, p.z)).reverse();
  return { left: other(left), right: other(right) };
};

const joined = (a: Strip, b: Strip): Strip => ({
  left: [...a.left, ...b.left.slice(1)],
  right: [...a.right, ...b.right.slice(1)],
});
