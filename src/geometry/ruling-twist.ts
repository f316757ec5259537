import type { Rail } from './rail.ts';

/**
 * How a surface twists along the ruling from left point i to right point j: the angle from its normal at the left end
 * to its normal at the right end, about the ruling, in (−π, π]. A ruled surface is developable exactly where this is
 * 0 (D. J. Struik, Lectures on Classical Differential Geometry, 1950). At a corner the normal may be any
 * between the two sides', so the smallest twist counts. 0 where a ruling or a rail has no length, or the rail runs
 * along the ruling.
 */
export const rulingTwist = (left: Rail, right: Rail, i: number, j: number): number => {
  if (left.corner[i] === 0 && right.corner[j] === 0) return twist(left, left.into, i, right, right.into, j);
  // Angles of all four normals, measured about the ruling from the left one on the way in.
  const rightIn = twist(left, left.into, i, right, right.into, j);
  const rightOut = twist(left, left.into, i, right, right.out, j);
  const leftOut = rightOut - twist(left, left.out, i, right, right.out, j);
  const above = Math.min(rightIn, rightOut) - Math.max(0, leftOut);
  const below = Math.max(rightIn, rightOut) - Math.min(0, leftOut);
  if (above > 0) return above;
  return Math.min(below, 0);
};

/** A rail that runs along its ruling (within a thirty-thousandth of a radian) leaves the normal there open: no twist is counted. */
const ALONG = 1e-9;
const liesAlong = (across: number, square: number): boolean => !(across > ALONG * square);

/** The square of the twist, or what is as good where it is small and cheaper to find: 2 − 2·cos. */
export const squaredTwist = (left: Rail, right: Rail, i: number, j: number): number => {
  if (left.corner[i] === 1 || right.corner[j] === 1) return 2 - 2 * Math.cos(rulingTwist(left, right, i, j));
  const [a, b] = [3 * i, 3 * j];
  const rx = right.at[b]! - left.at[a]!;
  const ry = right.at[b + 1]! - left.at[a + 1]!;
  const rz = right.at[b + 2]! - left.at[a + 2]!;
  const [lx, ly, lz] = [left.into[a]!, left.into[a + 1]!, left.into[a + 2]!];
  const [tx, ty, tz] = [right.into[b]!, right.into[b + 1]!, right.into[b + 2]!];
  const square = rx * rx + ry * ry + rz * rz;
  const leftAlong = lx * rx + ly * ry + lz * rz;
  const rightAlong = tx * rx + ty * ry + tz * rz;
  // Unit ways: what of them is square to the ruling is shorter by what lies along it.
  const [leftAcross, rightAcross] = [square - leftAlong * leftAlong, square - rightAlong * rightAlong];
  if (liesAlong(leftAcross, square) || liesAlong(rightAcross, square)) return 0;
  const cosine = square * (lx * tx + ly * ty + lz * tz) - leftAlong * rightAlong;
  return 2 - (2 * cosine) / Math.sqrt(leftAcross * rightAcross);
};

const twist = (
  left: Rail,
  leftWays: Float64Array,
  i: number,
  right: Rail,
  rightWays: Float64Array,
  j: number,
): number => {
  const [a, b] = [3 * i, 3 * j];
  const [rx, ry, rz] = [
    right.at[b]! - left.at[a]!,
    right.at[b + 1]! - left.at[a + 1]!,
    right.at[b + 2]! - left.at[a + 2]!,
  ];
  const [lx, ly, lz] = [leftWays[a]!, leftWays[a + 1]!, leftWays[a + 2]!];
  const [tx, ty, tz] = [rightWays[b]!, rightWays[b + 1]!, rightWays[b + 2]!];
  const square = rx * rx + ry * ry + rz * rz;
  const leftAlong = lx * rx + ly * ry + lz * rz;
  const rightAlong = tx * rx + ty * ry + tz * rz;
  if (
    liesAlong(square - leftAlong * leftAlong, square) ||
    liesAlong(square - rightAlong * rightAlong, square)
  )
    return 0;
  // The normals are the ways turned a quarter about the ruling: the same angle lies between what of the ways is
  // square to it.
  const cosine = square * (lx * tx + ly * ty + lz * tz) - leftAlong * rightAlong;
  const sine =
    Math.sqrt(square) * (rx * (ly * tz - lz * ty) + ry * (lz * tx - lx * tz) + rz * (lx * ty - ly * tx));
  return cosine === 0 && sine === 0 ? 0 : Math.atan2(sine, cosine);
};
