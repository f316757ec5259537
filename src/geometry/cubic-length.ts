import type { Cubic } from './path.ts';
import { CUBIC_LENGTH } from './tolerance.ts';

// Gauss's rule of 7 points inside Kronrod's of 15, on [-1, 1] (tabulated in QUADPACK, Piessens et al. 1983).
// Gauss's points are the odd ones and the middle.
const NODES = [
  0.9914553711208126, 0.9491079123427585, 0.8648644233597691, 0.7415311855993945, 0.5860872354676911,
  0.4058451513773972, 0.2077849550078985,
] as const;
const KRONROD = [
  0.022935322010529224, 0.06309209262997856, 0.10479001032225019, 0.14065325971552592, 0.1690047266392679,
  0.19035057806478542, 0.20443294007529889,
] as const;
const GAUSS = [0, 0.1294849661688697, 0, 0.27970539148927664, 0, 0.3818300505051189, 0] as const;
const KRONROD_MIDDLE = 0.20948214108472782;
const GAUSS_MIDDLE = 0.4179591836734694;

/** Halving stops here at the latest: 2^-40 of a curve is no length. */
const DEEPEST = 40;

/** The velocity of a cubic as a polynomial: a + b t + c t², each way. */
interface Velocity {
  readonly ax: number;
  readonly bx: number;
  readonly cx: number;
  readonly ay: number;
  readonly by: number;
  readonly cy: number;
}

const velocityOf = ({ from, c1, c2, to }: Cubic): Velocity => ({
  ax: 3 * (c1.x - from.x),
  bx: 6 * (from.x - 2 * c1.x + c2.x),
  cx: 3 * (to.x - from.x + 3 * (c1.x - c2.x)),
  ay: 3 * (c1.y - from.y),
  by: 6 * (from.y - 2 * c1.y + c2.y),
  cy: 3 * (to.y - from.y + 3 * (c1.y - c2.y)),
});

const speed = (v: Velocity, t: number): number => {
  const x = v.ax + t * (v.bx + t * v.cx);
  const y = v.ay + t * (v.by + t * v.cy);
  return Math.sqrt(x * x + y * y);
};

const lengthBetween = (v: Velocity, t0: number, t1: number, within: number, depth: number): number => {
  const middle = (t0 + t1) / 2;
  const half = (t1 - t0) / 2;
  const atMiddle = speed(v, middle);
  let kronrod = KRONROD_MIDDLE * atMiddle;
  let gauss = GAUSS_MIDDLE * atMiddle;
  for (let i = 0; i < 7; i++) {
    const step = half * NODES[i]!;
    const pair = speed(v, middle - step) + speed(v, middle + step);
    kronrod += KRONROD[i]! * pair;
    gauss += GAUSS[i]! * pair;
  }
  const rounding = 1e-14 * Math.abs(kronrod * half);
  if (!(Math.abs((kronrod - gauss) * half) > within + rounding) || depth >= DEEPEST) return kronrod * half;
  return (
    lengthBetween(v, t0, middle, within / 2, depth + 1) + lengthBetween(v, middle, t1, within / 2, depth + 1)
  );
};

/** Length of a cubic between two parameters, mm, to CUBIC_LENGTH; negative where t1 < t0. */
export const cubicLength = (c: Cubic, t0 = 0, t1 = 1): number =>
  lengthIn(velocityOf(c), t0, t1, CUBIC_LENGTH);

/**
 * Parted where either part of the velocity changes sign: where a cubic turns back on itself both do, and a rule that looks at
 * fifteen places can miss the turn altogether.
 */
const lengthIn = (v: Velocity, t0: number, t1: number, within: number): number => {
  const [low, high] = [Math.min(t0, t1), Math.max(t0, t1)];
  const stops = [low];
  const stopAt = (t: number): void => {
    if (t > low && t < high) stops.push(t);
  };
  atTurns(v.ax, v.bx, v.cx, stopAt);
  atTurns(v.ay, v.by, v.cy, stopAt);
  if (stops.length === 1) return lengthBetween(v, t0, t1, within, 0);
  stops.push(high);
  stops.sort((s, t) => s - t);
  let sum = 0;
  for (let i = 1; i < stops.length; i++) {
    sum += lengthBetween(v, stops[i - 1]!, stops[i]!, within / stops.length, 0);
  }
  return t0 < t1 ? sum : -sum;
};

/** Gives the roots of a + b t + c t², without the cancellation that the school formula has. */
const atTurns = (a: number, b: number, c: number, give: (t: number) => void): void => {
  const square = b * b - 4 * a * c;
  if (!(square >= 0)) return;
  const q = -(b + Math.sign(b || 1) * Math.sqrt(square)) / 2;
  give(q / c);
  give(a / q);
};

/** The parameter at a distance along a cubic of known length, mm: right to CUBIC_LENGTH. */
export const cubicParameter = (c: Cubic, mm: number, length: number): number => {
  if (!(mm > 0)) return 0;
  if (!(mm < length)) return 1;
  const v = velocityOf(c);
  let [low, high] = [0, 1];
  let t = mm / length;
  let off = lengthIn(v, 0, t, CUBIC_LENGTH / 4) - mm;
  // Newton's steps, kept between what is known to be too short and too far.
  for (let i = 0; i < 60 && Math.abs(off) > CUBIC_LENGTH / 4; i++) {
    if (off > 0) high = t;
    else low = t;
    const step = t - off / speed(v, t);
    const next = step > low && step < high ? step : (low + high) / 2;
    off += lengthIn(v, t, next, CUBIC_LENGTH / 4);
    t = next;
  }
  return t;
};
