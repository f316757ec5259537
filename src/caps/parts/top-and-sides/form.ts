import { ovalPoint } from '../../../geometry/oval.ts';
import { type Point3, point3 } from '../../../geometry/space.ts';
import type { Strip } from '../../../geometry/strip.ts';
import type { TriangleStrip } from '../../../geometry/triangle-strip.ts';
import type { FormStrip } from '../../form.ts';
import type { OpeningCurve } from './opening-curve.ts';
import type { TopAndSidesShape } from './top-and-sides-shape.ts';

/** Top and sides as they stand, the opening on level 0. */
export const topAndSidesStrips = (
  { seam, sideStrip }: TopAndSidesShape,
  opening: OpeningCurve,
): readonly FormStrip[] => {
  const right = asPaired(sideStrip);
  return [
    ...topStrips(seam, opening).map((strip) => ({ piece: 'top', copy: 0, strip })),
    { piece: 'side', copy: 0, strip: right },
    { piece: 'side', copy: 1, strip: { left: right.right.map(mirror), right: right.left.map(mirror) } },
  ];
};

const mirror = ({ x, y, z }: Point3): Point3 => point3(-x, y, z);

/** From the front to the back of the top. Where its front edge is round, what lies level beside it on either hand stands first. */
const topStrips = (seam: readonly Point3[], opening: OpeningCurve): readonly Strip[] => {
  const { oval, roundFront } = opening;
  const start = roundFront ? seam.findIndex((p) => p.y >= oval.halfLength) : 0;
  const over = seam.slice(start);
  const main = { left: over, right: over.map(mirror) };
  if (start === 0) return [main];
  const beside = seam.slice(0, start + 1);
  const edge = beside.map((_, i) => {
    const p = ovalPoint(oval, opening.frontAngle + ((Math.PI / 2 - opening.frontAngle) * i) / start);
    return point3(p.x, p.y, 0);
  });
  return [{ left: beside, right: edge }, { left: edge.map(mirror), right: beside.map(mirror) }, main];
};

/** A strip of triangles as one of rulings, of which one end or the other stands still. */
const asPaired = ({ left, right, steps }: TriangleStrip): Strip => {
  let [i, j] = [0, 0];
  const pairs = [[left[0]!, right[0]!] as const];
  for (const side of steps) {
    if (side === 'left') i++;
    else j++;
    pairs.push([left[i]!, right[j]!]);
  }
  return { left: pairs.map(([p]) => p), right: pairs.map(([, q]) => q) };
};
