import type { StepCosts } from './cheapest-steps.ts';
import type { Corridor } from './corridor.ts';
import type { Rail } from './rail.ts';
import { squaredTwist } from './ruling-twist.ts';

/**
 * What is made least in choosing a strip's rulings:
 * - twist: the square of the angle between the normals at a ruling's ends, over the length of both rails. 0 on a
 *   developable, whose own rulings it therefore finds however the rails are sampled; the measure of choice for cloth.
 * - fold: each inner edge's length times the angle between the triangles at its sides (total mean curvature).
 * - area: the area of the triangles.
 */
export type StripMeasure = 'twist' | 'fold' | 'area';

/** What every step within a corridor costs by a measure. Costs outside it mean nothing. */
export const stripCosts = (
  measure: StripMeasure,
  left: Rail,
  right: Rail,
  { from, to }: Corridor,
): StepCosts => {
  const eachRuling = (visit: (place: number, i: number, j: number) => void) => {
    for (let i = 0; i < left.count; i++) {
      for (let j = from[i]!; j <= to[i]!; j++) visit(i * right.count + j, i, j);
    }
  };
  if (measure === 'twist') return twistCosts(left, right, eachRuling);
  return measure === 'area' ? triangles(left, right, eachRuling).areas : foldCosts(left, right, eachRuling);
};

type EachRuling = (visit: (place: number, i: number, j: number) => void) => void;

/**
 * Where nothing twists (in a plane, say) short rulings are chosen: their share in the cost, so small that on a curved
 * strip it moves no ruling by more than its sampling does.
 */
const SHORTNESS = 1e-6;

const twistCosts = (left: Rail, right: Rail, eachRuling: EachRuling): StepCosts => {
  const [n, m] = [left.count, right.count];
  const half = new Float64Array(n * m);
  const share =
    SHORTNESS / Math.max(squaredRuling(left, right, 0, 0), squaredRuling(left, right, n >> 1, m >> 1), 1);
  eachRuling((place, i, j) => {
    half[place] = squaredTwist(left, right, i, j) / 2 + share * squaredRuling(left, right, i, j);
  });
  // Each step counts the mean of its two rulings over the length that it goes.
  const costs = { left: new Float64Array(n * m), right: new Float64Array(n * m) };
  eachRuling((place, i, j) => {
    if (i < n - 1) costs.left[place] = (half[place]! + half[place + m]!) * left.chords[i]!;
    if (j < m - 1) costs.right[place] = (half[place]! + half[place + 1]!) * right.chords[j]!;
  });
  return costs;
};

const squaredRuling = (left: Rail, right: Rail, i: number, j: number): number => {
  const [x, y, z] = [
    right.at[3 * j]! - left.at[3 * i]!,
    right.at[3 * j + 1]! - left.at[3 * i + 1]!,
    right.at[3 * j + 2]! - left.at[3 * i + 2]!,
  ];
  return x * x + y * y + z * z;
};

/**
 * Unit normals and areas of the triangles that steps from each ruling make; a triangle without area has no normal (0,
 * 0, 0).
 */
const triangles = (left: Rail, right: Rail, eachRuling: EachRuling) => {
  const [n, m] = [left.count, right.count];
  const normals = { left: new Float64Array(3 * n * m), right: new Float64Array(3 * n * m) };
  const areas = { left: new Float64Array(n * m), right: new Float64Array(n * m) };
  const measure = (side: 'left' | 'right', place: number, i: number, j: number, rail: Rail, k: number) => {
    const [p, q] = [left.at, right.at];
    const [rx, ry, rz] = [
      q[3 * j]! - p[3 * i]!,
      q[3 * j + 1]! - p[3 * i + 1]!,
      q[3 * j + 2]! - p[3 * i + 2]!,
    ];
    const [sx, sy, sz] = [
      rail.at[3 * k + 3]! - rail.at[3 * k]!,
      rail.at[3 * k + 4]! - rail.at[3 * k + 1]!,
      rail.at[3 * k + 5]! - rail.at[3 * k + 2]!,
    ];
    const [x, y, z] = [ry * sz - rz * sy, rz * sx - rx * sz, rx * sy - ry * sx];
    const length = Math.sqrt(x * x + y * y + z * z);
    areas[side][place] = length / 2;
    if (!(length > 0)) return;
    normals[side][3 * place] = x / length;
    normals[side][3 * place + 1] = y / length;
    normals[side][3 * place + 2] = z / length;
  };
  eachRuling((place, i, j) => {
    if (i < n - 1) measure('left', place, i, j, left, i);
    if (j < m - 1) measure('right', place, i, j, right, j);
  });
  return { normals, areas };
};

const foldCosts = (left: Rail, right: Rail, eachRuling: EachRuling): StepCosts => {
  const [n, m] = [left.count, right.count];
  const { normals } = triangles(left, right, eachRuling);
  const turns = new Float64Array(4 * n * m);
  eachRuling((place, i, j) => {
    const length = Math.sqrt(squaredRuling(left, right, i, j));
    if (i > 0 && i < n - 1) turns[4 * place] = length * fold(normals, place, m, 0, 0);
    if (i > 0 && j < m - 1) turns[4 * place + 1] = length * fold(normals, place, m, 0, 1);
    if (j > 0 && i < n - 1) turns[4 * place + 2] = length * fold(normals, place, m, 1, 0);
    if (j > 0 && j < m - 1) turns[4 * place + 3] = length * fold(normals, place, m, 1, 1);
  });
  return { left: new Float64Array(n * m), right: new Float64Array(n * m), turns };
};

/**
 * The angle between the triangle that led to a ruling and the one that leaves it, 0 to π; 0 beside a triangle without
 * area.
 */
const fold = (
  normals: { readonly left: Float64Array; readonly right: Float64Array },
  place: number,
  m: number,
  last: number,
  next: number,
): number => {
  const a = last === 0 ? normals.left : normals.right;
  const b = next === 0 ? normals.left : normals.right;
  const p = 3 * (place - (last === 0 ? m : 1));
  const q = 3 * place;
  const cosine = a[p]! * b[q]! + a[p + 1]! * b[q + 1]! + a[p + 2]! * b[q + 2]!;
  const [x, y, z] = [
    a[p + 1]! * b[q + 2]! - a[p + 2]! * b[q + 1]!,
    a[p + 2]! * b[q]! - a[p]! * b[q + 2]!,
    a[p]! * b[q + 1]! - a[p + 1]! * b[q]!,
  ];
  const sine = Math.sqrt(x * x + y * y + z * z);
  return sine === 0 && cosine === 0 ? 0 : Math.atan2(sine, cosine);
};
