import type { Head } from '../caps/style.ts';
import { ovalOfGirth } from '../geometry/oval.ts';

/** A level cut through the head form, mm: half its length and breadth, and how far its middle stands to the front. */
export interface HeadCut {
  readonly halfLength: number;
  readonly halfBreadth: number;
  readonly middle: number;
}

/** A plain head form such as milliners work on: widest at height 0, where the tape goes round. */
export interface HeadForm {
  readonly halfLength: number;
  readonly halfBreadth: number;
  /** Of the top over the tape, and of the foot below it, mm. */
  readonly top: number;
  readonly foot: number;
}

/** How full the head is between brow and top: 2 would be an ellipse. Our own, for the look of a block. */
const FULLNESS = 2.3;
const PROFILE_STEPS = 48;

/**
 * The head form of a girth, a breadth by length and an arc over the top: as high as makes the way over it, half-way between
 * front to back and side to side, as long as the arc, to 0.1 mm. Never lower than a quarter of its length.
 */
export const headForm = ({ girth, ratio, arc }: Head): HeadForm => {
  const { halfLength, halfBreadth } = ovalOfGirth(girth, ratio);
  const over = (top: number) => (wayOver(halfLength, top) + wayOver(halfBreadth, top)) / 2;
  let [low, high] = [halfLength / 2, 3 * halfLength];
  while (high - low > 0.05) {
    const middle = (low + high) / 2;
    if (over(middle) < arc) low = middle;
    else high = middle;
  }
  return { halfLength, halfBreadth, top: low, foot: -1.9 * halfLength };
};

/** The share of the widest cut at a share of the way up. */
const narrowing = (share: number): number => Math.max(0, 1 - share ** FULLNESS) ** (1 / FULLNESS);

const wayOver = (half: number, top: number): number => {
  let [length, x, z] = [0, half, 0];
  for (let i = 1; i <= PROFILE_STEPS; i++) {
    const turn = ((i / PROFILE_STEPS) * Math.PI) / 2;
    // The profile's own parameter, so that steps are short where it bends.
    const [p, q] = [half * Math.cos(turn) ** (2 / FULLNESS), top * Math.sin(turn) ** (2 / FULLNESS)];
    length += Math.hypot(p - x, q - z);
    [x, z] = [p, q];
  }
  return 2 * length;
};

/**
 * Below the tape the form goes down over brow and cheek to a neck: heights in parts of the half length, and there length
 * and breadth in parts of the widest and the middle in parts of the half length. Our own, for the look of a block.
 */
const BELOW = [
  { down: 0, long: 1, broad: 1, middle: 0 },
  { down: 0.35, long: 0.985, broad: 0.97, middle: 0.01 },
  { down: 0.75, long: 0.87, broad: 0.84, middle: 0.06 },
  { down: 1.1, long: 0.67, broad: 0.66, middle: 0.05 },
  { down: 1.35, long: 0.55, broad: 0.6, middle: -0.03 },
  { down: 1.65, long: 0.55, broad: 0.62, middle: -0.07 },
  { down: 1.9, long: 0.58, broad: 0.66, middle: -0.08 },
] as const;

/** The cut at a height, mm; null above the top and below the foot. */
export const headCut = ({ halfLength, halfBreadth, top, foot }: HeadForm, z: number): HeadCut | null => {
  if (z > top || z < foot) return null;
  if (z >= 0) {
    const k = narrowing(z / top);
    return { halfLength: halfLength * k, halfBreadth: halfBreadth * k, middle: 0 };
  }
  const down = -z / halfLength;
  const next = Math.max(
    1,
    BELOW.findIndex((row) => row.down >= down),
  );
  const slope = (key: 'long' | 'broad' | 'middle', i: number): number => {
    if (i === 0 || i === BELOW.length - 1) return 0;
    const steep = (k: number) =>
      (BELOW[k]![key] - BELOW[k - 1]![key]) / (BELOW[k]!.down - BELOW[k - 1]!.down);
    const [before, after] = [steep(i), steep(i + 1)];
    // So limited, the curve turns nowhere but where its points do.
    const most = before * after > 0 ? 3 * Math.min(Math.abs(before), Math.abs(after)) : 0;
    return Math.max(-most, Math.min(most, (before + after) / 2));
  };
  const at = (key: 'long' | 'broad' | 'middle'): number => {
    const [a, b] = [BELOW[next - 1]!, BELOW[next]!];
    const h = b.down - a.down;
    const u = (down - a.down) / h;
    const v = 1 - u;
    return (
      v * v * (a[key] * (1 + 2 * u) + slope(key, next - 1) * h * u) +
      u * u * (b[key] * (1 + 2 * v) - slope(key, next) * h * v)
    );
  };
  return {
    halfLength: halfLength * at('long'),
    halfBreadth: halfBreadth * at('broad'),
    middle: halfLength * at('middle'),
  };
};

/**
 * A head form with all that lies between it and the middle of the shell: as much longer round (mm) as the shell goes round
 * more than the head itself, and higher by the thickness of that.
 */
export const cladForm = (form: HeadForm, girth: number, around: number): HeadForm => ({
  ...form,
  halfLength: form.halfLength * (1 + around / girth),
  halfBreadth: form.halfBreadth * (1 + around / girth),
  top: form.top + around / (2 * Math.PI),
});

/** Cloth may press into the head from its sides by this, mm, for hair and skin give; and lies so far over its top. */
const [PRESSED, OVER] = [1, 1];

/** How high cloth on the head form lies over a place beside its axis, mm; −Infinity where it is not over the tape. */
export const surfaceOver = ({ halfLength, halfBreadth, top }: HeadForm, x: number, y: number): number => {
  const [p, q] = [x / (halfBreadth - PRESSED), y / (halfLength - PRESSED)];
  const share = Math.sqrt(p * p + q * q);
  return share < 1 ? OVER + top * (1 - share ** FULLNESS) ** (1 / FULLNESS) : -Infinity;
};

/** Places inside the surface of cloth on the head form, moved straight out of it from the middle of the widest place; the others as they are. */
export const outOfHead = ({ halfLength, halfBreadth, top }: HeadForm, at: Float64Array): Float64Array => {
  const moved = Float64Array.from(at);
  for (let k = 0; k < at.length; k += 3) {
    const [x, y, z] = [at[k]!, at[k + 1]!, at[k + 2]! - OVER];
    const [p, q] = [x / (halfBreadth - PRESSED), y / (halfLength - PRESSED)];
    const up = Math.max(0, z / top);
    const share = (Math.sqrt(p * p + q * q) ** FULLNESS + up ** FULLNESS) ** (1 / FULLNESS);
    if (!(share > 0 && share < 1)) continue;
    moved[k] = x / share;
    moved[k + 1] = y / share;
    moved[k + 2] = OVER + (z > 0 ? z / share : z);
  }
  return moved;
};
