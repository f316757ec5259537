import { fitPath } from '../../geometry/fit.ts';
import { reversed } from '../../geometry/measure.ts';
import { anglesFromFront, type Oval } from '../../geometry/oval.ts';
import { offOval } from '../../geometry/oval-slope.ts';
import type { Path } from '../../geometry/path.ts';
import { type Point, point } from '../../geometry/point.ts';
import { type Strip, unroll } from '../../geometry/strip.ts';
import { wholeEdge } from '../../geometry/whole-edge.ts';

/** A visor as it is wished: a surface of equal slope off the front of the head's oval. mm and radians. */
export interface VisorWish {
  readonly opening: Oval;
  /** The stretch of the opening that it is sewn to, centred on the front. */
  readonly innerEdge: number;
  /** Along the slope, at the centre. More than twice the tip rounding. */
  readonly depth: number;
  /** Below level. */
  readonly drop: number;
  /** 0 pointed, 1 square. */
  readonly fullness: number;
  /** Radius of the corner where the outer edge runs into the inner one. */
  readonly tipRounding: number;
}

/** A flat visor, front downwards, the middle of its inner edge on the origin; both edges counter-clockwise. */
export interface VisorShape {
  /** From the left tip round the front to the right tip. */
  readonly outer: Path;
  /** From the right tip back to the left. */
  readonly inner: Path;
}

/** Where the outer edge stands: mm along the opening from the centre front, mm out along the slope. */
interface Reach {
  readonly along: number;
  readonly out: number;
}

const EDGE_STEPS = 72;
const TIP_STEPS = 10;
const [POINTED, SQUARE] = [1.6, 4];

/**
 * The right half of the outer edge on the developed slope: a superellipse |along/L|^p + |out/D|² = 1 with rounded ends.
 * It is drawn a tip radius inside and then moved outwards by that radius, so that the corner is a true arc, tangent to
 * the inner edge exactly where the sewn stretch ends.
 */
const outerReach = ({ innerEdge, depth, fullness, tipRounding: r }: VisorWish): readonly Reach[] => {
  const power = POINTED * (SQUARE / POINTED) ** fullness;
  const [half, core] = [innerEdge / 2, depth - 2 * r];
  const edge = Array.from({ length: EDGE_STEPS + 1 }, (_, i) => {
    const u = Math.sin((i / EDGE_STEPS) * (Math.PI / 2));
    const height = Math.sqrt(Math.max(0, 1 - u ** power));
    const [nx, ny] = [core * u ** (power - 1), ((2 * half) / power) * height];
    const n = Math.hypot(nx, ny);
    return { along: half * u + (r * nx) / n, out: r + core * height + (r * ny) / n };
  });
  const tip = Array.from({ length: TIP_STEPS }, (_, i) => {
    const turn = ((i + 1) / TIP_STEPS) * (Math.PI / 2);
    return { along: half + r * Math.cos(turn), out: r - r * Math.sin(turn) };
  });
  return [...edge, ...tip];
};

/**
 * The right half of the visor in space: left rail the opening from the centre front to the end of the sewn stretch, right rail the
 * outer edge. Rulings are the slope's own; round the tip they fan from the end of the stretch.
 */
export const visorStrip = (wish: VisorWish): Strip => {
  const reach = outerReach(wish);
  const half = wish.innerEdge / 2;
  const [level, down] = [Math.cos(wish.drop), Math.sin(wish.drop)];
  // Round the tip the outer edge turns back, but distances are looked up in ascending order.
  const furthest = reach.reduce((most, { along }) => Math.max(most, along), 0);
  const stops = [...new Set([...reach.map(({ along }) => along), half, furthest])].sort((p, q) => p - q);
  const angles = new Map(anglesFromFront(wish.opening, stops).map((angle, i) => [stops[i]!, angle]));
  return {
    left: reach.map(({ along }) => offOval(wish.opening, angles.get(Math.min(along, half))!, 0, 0)),
    right: reach.map(({ along, out }) => offOval(wish.opening, angles.get(along)!, out * level, out * down)),
  };
};

/** The visor rolled flat. */
export const visorShape = (wish: VisorWish): VisorShape => {
  const flat = unroll(visorStrip(wish));
  // The first ruling runs from the origin along +x and the strip towards +y: turn it to run down, and the strip to the right.
  const stand = (p: Point) => point(p.y, -p.x);
  const start = point(1, 0);
  const sewn = flat.left.findIndex((p, i) => i > 0 && p === flat.left[i - 1]);
  const inner = fitPath(flat.left.slice(0, sewn < 0 ? undefined : sewn).map(stand), { start });
  const outer = fitPath(flat.right.map(stand), { start });
  return { outer: wholeEdge(outer), inner: reversed(wholeEdge(inner)) };
};
