import { type Rail, railOf } from './rail.ts';
import type { TriangleStrip } from './triangle-strip.ts';

/** Lengths for the flat steps of both rails, mm: one for each step of a rail. */
export interface StepLengths {
  readonly left: Float64Array;
  readonly right: Float64Array;
}

/**
 * How long each rail step is once the smooth strip that was sampled, and not the triangles, is rolled flat. A curve's
 * chord of arc length h falls short of it by h³κ²/24. Flat, the curve keeps only the part of its curvature that lies
 * in the surface, so its chord grows by h³κₙ²/24, κₙ the curvature along the surface's normal. With these lengths the
 * flat rails miss the true development by the fourth power of the sampling step and not by its square, and seams that
 * meet along one curve come out equally long on both pieces.
 */
export const smoothSteps = (strip: TriangleStrip): StepLengths => {
  const [left, right] = [railOf(strip.left), railOf(strip.right)];
  const across = middleRulings(strip);
  return {
    left: lengthened(left, right, across.left),
    right: lengthened(right, left, across.right),
  };
};

/** For each point of a rail, the point of the other rail at the other end of its middle ruling. */
const middleRulings = ({ left, right, steps }: TriangleStrip) => {
  const first = { left: new Int32Array(left.length), right: new Int32Array(right.length) };
  const last = { left: new Int32Array(left.length), right: new Int32Array(right.length) };
  let [i, j] = [0, 0];
  for (const side of steps) {
    if (side === 'left') first.left[++i] = j;
    else first.right[++j] = i;
    last.left[i] = j;
    last.right[j] = i;
  }
  const middle = (side: 'left' | 'right') => first[side].map((from, k) => (from + last[side][k]!) >> 1);
  return { left: middle('left'), right: middle('right') };
};

const lengthened = (rail: Rail, other: Rail, across: Int32Array): Float64Array => {
  const bends = normalCurvatures(rail, other, across);
  return rail.chords.map((chord, i) => {
    const [a, b] = [bends[i]!, bends[i + 1]!];
    // An end or a corner has no curvature of its own: the step's other end speaks for it.
    const square = Number.isNaN(a) ? b * b : Number.isNaN(b) ? a * a : (a * a + a * b + b * b) / 3;
    return square > 0 ? chord * (1 + (square * chord * chord) / 24) : chord;
  });
};

/** Curvature along the surface's normal at each point of a rail, 1/mm, + or − as one; NaN at ends and corners. */
const normalCurvatures = (rail: Rail, other: Rail, across: Int32Array): Float64Array => {
  const bends = new Float64Array(rail.count).fill(Number.NaN);
  const { at, into, chords, corner } = rail;
  for (let i = 1; i < rail.count - 1; i++) {
    if (corner[i] === 1) continue;
    const [p, q] = [3 * i, 3 * across[i]!];
    const [a, b] = [chords[i - 1]!, chords[i]!];
    const bent = (k: number) => ((at[k + 3]! - at[k]!) / b - (at[k]! - at[k - 3]!) / a) * (2 / (a + b));
    const [kx, ky, kz] = [bent(p), bent(p + 1), bent(p + 2)];
    const [rx, ry, rz] = [
      other.at[q]! - at[p]!,
      other.at[q + 1]! - at[p + 1]!,
      other.at[q + 2]! - at[p + 2]!,
    ];
    const [tx, ty, tz] = [into[p]!, into[p + 1]!, into[p + 2]!];
    const [nx, ny, nz] = [ty * rz - tz * ry, tz * rx - tx * rz, tx * ry - ty * rx];
    const length = Math.sqrt(nx * nx + ny * ny + nz * nz);
    if (length > 0) bends[i] = (kx * nx + ky * ny + kz * nz) / length;
  }
  return bends;
};
