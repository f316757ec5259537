import { fitPath } from '../../../geometry/fit.ts';
import { reversed } from '../../../geometry/measure.ts';
import { anglesFromFront, type Oval } from '../../../geometry/oval.ts';
import { offOval } from '../../../geometry/oval-slope.ts';
import type { Path } from '../../../geometry/path.ts';
import { add, left, type Point, point, scale, subtract } from '../../../geometry/point.ts';
import { type Point3, point3 } from '../../../geometry/space.ts';
import { type Strip, unroll } from '../../../geometry/strip.ts';
import { wholeEdge } from '../../../geometry/whole-edge.ts';

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

/**
 * A flat visor, front downwards, the middle of its inner edge on the origin; both edges counter-clockwise, and each of two
 * halves that mirror each other curve by curve.
 */
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
const TURN_STEPS = 8;
const TIP_STEPS = 10;
const [POINTED, SQUARE] = [1.6, 4];

/**
 * The right half of the outer edge on the developed slope: a superellipse |along/L|^p + |out/D|² = 1 with rounded ends.
 * It is drawn a tip radius inside and then moved outwards by that radius, so that the corner is a true arc, tangent to
 * the inner edge exactly where the sewn stretch ends.
 */
const outerReach = (wish: VisorWish): { readonly edge: readonly Reach[]; readonly tip: readonly Reach[] } => {
  const { innerEdge, depth, fullness, tipRounding: r } = wish;
  const power = POINTED * (SQUARE / POINTED) ** fullness;
  const [half, core] = [innerEdge / 2, depth - 2 * r];
  const even = [0, ...quarterOf(EDGE_STEPS).map(Math.sin)];
  // A shallow edge turns towards its tip within less than the last step: it has stops of its own there, at equal turns.
  const steepness = (2 * half) / (power * core);
  const turns = quarterOf(TURN_STEPS)
    .map((turn) => Math.max(0, 1 - (Math.tan(turn) / steepness) ** 2) ** (1 / power))
    .filter((u) => u > even.at(-1)!)
    .reverse();
  const edge = [...even, ...turns, 1].map((u) => {
    const height = Math.sqrt(Math.max(0, 1 - u ** power));
    const [nx, ny] = [core * u ** (power - 1), ((2 * half) / power) * height];
    const n = Math.hypot(nx, ny);
    return { along: half * u + (r * nx) / n, out: r + core * height + (r * ny) / n };
  });
  const tip = [...quarterOf(TIP_STEPS), Math.PI / 2].map((turn) => ({
    along: half + r * Math.cos(turn),
    out: r - r * Math.sin(turn),
  }));
  return { edge, tip };
};

/** Equal steps between nothing and a quarter turn. */
const quarterOf = (steps: number): readonly number[] =>
  Array.from({ length: steps - 1 }, (_, i) => ((i + 1) / steps) * (Math.PI / 2));

/** Stops closer than this (mm) are told apart by their tangent alone: off by less than 1e-5 mm. */
const STOP_GAP = 0.02;

/** Where rulings stand: every place the outer edge needs and the end of the sewn stretch, ascending, thinned to STOP_GAP. */
const stopsFor = (reach: readonly Reach[], half: number): readonly number[] => {
  const wanted = [...reach.map(({ along }) => along), half].sort((p, q) => p - q);
  return wanted.reduce<number[]>((stops, along) => {
    if (stops.length === 0 || along - stops.at(-1)! > STOP_GAP) stops.push(along);
    return stops;
  }, []);
};

/**
 * The slope that the right half of a visor is cut from, in space, at distances along the opening from the centre front (mm,
 * ascending): left rail the opening, right rail the visor's full depth down the slope.
 */
const visorStrip = ({ opening, depth, drop }: VisorWish, stops: readonly number[]): Strip => {
  const angles = anglesFromFront(opening, stops);
  const [out, down] = [depth * Math.cos(drop), depth * Math.sin(drop)];
  return {
    left: angles.map((angle) => offOval(opening, angle, 0, 0)),
    right: angles.map((angle) => offOval(opening, angle, out, down)),
  };
};

/** The whole visor in space, from the wearer's left to the right: left rail the opening, right rail the outer edge. */
export const visorSheet = (wish: VisorWish): Strip => {
  const half = wish.innerEdge / 2;
  const { edge, tip } = outerReach(wish);
  const reach = [...edge, ...tip];
  const angles = anglesFromFront(
    wish.opening,
    reach.map(({ along }) => Math.min(along, half)),
  );
  const outer = anglesFromFront(
    wish.opening,
    reach.map(({ along }) => along),
  );
  const right = {
    left: angles.map((angle) => offOval(wish.opening, angle, 0, 0)),
    right: reach.map(({ out }, i) =>
      offOval(wish.opening, outer[i]!, out * Math.cos(wish.drop), out * Math.sin(wish.drop)),
    ),
  };
  const whole = (rail: readonly Point3[]) => [
    ...rail
      .slice(1)
      .map((p) => point3(-p.x, p.y, p.z))
      .reverse(),
    ...rail,
  ];
  return { left: whole(right.left), right: whole(right.right) };
};

/** The visor rolled flat. */
export const visorShape = (wish: VisorWish): VisorShape => {
  const half = wish.innerEdge / 2;
  const { edge, tip } = outerReach(wish);
  const stops = stopsFor([...edge, ...tip], half);
  const flat = unroll(visorStrip(wish, stops));
  // The first ruling runs from the origin along +x and the strip towards +y: turn it to run down, and the strip to the right.
  const stand = (p: Point) => point(p.y, -p.x);
  const feet = flat.left.map(stand);
  const rulings = flat.right.map((p, i) => scale(subtract(stand(p), feet[i]!), 1 / wish.depth));
  const at = ({ along, out }: Reach): Point => {
    const i = lastNotAbove(stops, along);
    const foot = add(feet[i]!, scale(left(rulings[i]!), along - stops[i]!));
    return add(foot, scale(rulings[i]!, out));
  };
  const rulingAt = (along: number): Point => rulings[lastNotAbove(stops, along)]!;

  // The outer edge runs into its tip along a ruling and ends along the inner edge; its curvature jumps where the tip begins.
  const start = point(1, 0);
  const intoTip = scale(rulingAt(edge.at(-1)!.along), -1);
  const outer = [
    ...fitPath(edge.map(at), { start, end: intoTip }),
    ...fitPath([edge.at(-1)!, ...tip].map(at), { start: intoTip, end: scale(left(rulingAt(half)), -1) }),
  ];
  const sewn = stops.filter((stop) => stop < half - STOP_GAP);
  const inner = fitPath(
    [...sewn, half].map((along) => at({ along, out: 0 })),
    {
      start,
      end: left(rulingAt(half)),
    },
  );
  return { outer: wholeEdge(outer), inner: reversed(wholeEdge(inner)) };
};

/** Index of the last of ascending numbers that is not above a value; the first where all are. */
const lastNotAbove = (ascending: readonly number[], value: number): number => {
  let [low, high] = [0, ascending.length - 1];
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (ascending[middle]! <= value) low = middle;
    else high = middle - 1;
  }
  return low;
};
