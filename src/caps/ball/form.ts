import { curveAt } from '../../geometry/curve.ts';
import { type Path, pathEnd } from '../../geometry/path.ts';
import { type Point3, point3 } from '../../geometry/space.ts';
import type { Form, FormStrip } from '../form.ts';
import { topButtonStrips } from '../parts/button/form.ts';
import { visorStrips } from '../parts/visor/form.ts';
import { visorParts } from '../parts/visor/visor-parts.ts';
import type { Head } from '../style.ts';
import { type BallCrownShape, ballCrownShape } from './crown-shape.ts';
import { ballMeasures } from './measures.ts';
import type { BallValues } from './parameters.ts';
import { type BallStop, GORES, type OfGores, toSeam } from './profile.ts';

/** A ball cap in space: six gores, the back pair with its arch, a visor and a button; its strap let out, the crown as it is cut. */
export const ballForm = (values: BallValues, head: Head): Form => {
  const { wish, opening, girths } = ballMeasures(values, head);
  const shape = ballCrownShape(wish, opening);
  const worn = { ...head, girth: girths.shell };
  const [edge, top] = [shape.stops[0]!, shape.stops.at(-1)!];
  return {
    strips: [
      ...ballGoreStrips(shape),
      strapStrip(values, shape),
      ...visorStrips(values, visorParts(values, worn), worn, edge.reach.front / Math.cos(Math.PI / GORES)),
      ...topButtonStrips(values, top.height),
    ],
  };
};

/** From the centre back to the wearer's right and on round; on the left each is the mirror image of its fellow on the right. */
const ballGoreStrips = ({ stops, back }: BallCrownShape): readonly FormStrip[] => {
  const seam = (i: 0 | 1 | 2 | 3) => stops.map((stop) => seamPoint(stop, i));
  const right = [
    { piece: 'goreBack', strip: archStrip(back.arch, stops) },
    { piece: 'goreSide', strip: { left: seam(1), right: seam(2) } },
    { piece: 'goreFront', strip: { left: seam(2), right: seam(3) } },
  ];
  const across = (rail: readonly Point3[]) => rail.map((p) => point3(-p.x, p.y, p.z));
  return [
    ...right.map((gore) => ({ ...gore, copy: 0 })),
    ...right.toReversed().map(({ piece, strip }) => ({
      piece,
      copy: 1,
      strip: { left: across(strip.right), right: across(strip.left) },
    })),
  ];
};

/** The strap let out across the opening, along the lower edge: for the picture alone. */
const strapStrip = (
  { backFastening, backStrapWidth }: BallValues,
  { stops, back }: BallCrownShape,
): FormStrip => {
  const reach = stops[0]!.reach.back;
  const foot = pathEnd(back.arch).x;
  const across = (z: number): readonly Point3[] => {
    const right = onGore(0, reach, foot, z);
    return [point3(-right.x, right.y, z), onGore(0, reach, -toSeam(reach, reach), z), right];
  };
  return {
    piece: backFastening === 'strap' ? 'backStrap' : 'elasticCasing',
    copy: 0,
    strip: { left: across(backStrapWidth), right: across(0) },
    open: true,
    likeness: true,
  };
};

/** The middle of gore 0, 1 or 2 (back, side, front) on the wearer's right: radians counter-clockwise from there. */
const middleOf = (gore: number): number => (gore - 1) * (Math.PI / 3);

/** A point of a gore: mm from the axis to its middle there, and along it counter-clockwise. */
const onGore = (gore: number, reach: number, along: number, height: number): Point3 => {
  const [cos, sin] = [Math.cos(middleOf(gore)), Math.sin(middleOf(gore))];
  return point3(reach * cos - along * sin, reach * sin + along * cos, height);
};

/** A point of the seam before gore 0, 1 or 2 of the right half, or of the one at the centre front (3). */
const seamPoint = ({ reach: { back, side, front }, height }: BallStop, seam: 0 | 1 | 2 | 3): Point3 => {
  switch (seam) {
    case 0:
      return onGore(0, back, -toSeam(back, back), height);
    case 1:
      return onGore(0, back, toSeam(back, side), height);
    case 2:
      return onGore(1, side, toSeam(side, front), height);
    case 3:
      return onGore(2, front, toSeam(front, front), height);
  }
};

/** Rulings between the foot of the arch and its top. */
const ARCH_STEPS = 24;

/** The back gore on the wearer's right: ruling by ruling from the arch, and above it from the centre back seam. */
const archStrip = (arch: Path, stops: readonly BallStop[]) => {
  const cut = Array.from({ length: ARCH_STEPS + 1 }, (_, i) => curveAt(arch[0]!, 1 - i / ARCH_STEPS));
  const top = cut.at(-1)!.y;
  const above = stops.filter(({ way }) => way.back > top);
  const beside = cut.map(({ x, y }) => ({ x, stop: stopAt(stops, y) }));
  return {
    left: [
      ...beside.map(({ x, stop }) => onGore(0, stop.reach.back, x, stop.height)),
      ...above.map((stop) => seamPoint(stop, 0)),
    ],
    right: [...beside.map(({ stop }) => stop), ...above].map((stop) => seamPoint(stop, 1)),
  };
};

/** The crown at a way up a back gore, on the chord between two stops. */
const stopAt = (stops: readonly BallStop[], way: number): BallStop => {
  const next = Math.max(
    1,
    stops.findIndex((stop) => stop.way.back >= way),
  );
  const [p, q] = [stops[next - 1]!, stops[next]!];
  const share = (way - p.way.back) / (q.way.back - p.way.back);
  const mix = (a: number, b: number) => a + (b - a) * share;
  const mixed = (a: OfGores, b: OfGores): OfGores => ({
    back: mix(a.back, b.back),
    side: mix(a.side, b.side),
    front: mix(a.front, b.front),
  });
  return {
    height: mix(p.height, q.height),
    reach: mixed(p.reach, q.reach),
    way: mixed(p.way, q.way),
  };
};
