import type { Point3 } from './space.ts';

/**
 * A rail laid out for counting: three numbers a point. Where it bends smoothly, both directions of a point are one;
 * at a corner the way into it and the way out of it differ. A rail of one point has directions without length.
 */
export interface Rail {
  readonly count: number;
  readonly at: Float64Array;
  /** Unit vectors along the rail. */
  readonly into: Float64Array;
  readonly out: Float64Array;
  /** 1 where the rail has a corner. */
  readonly corner: Uint8Array;
  /** Length of the chord from each point to the next, mm; one less than points. */
  readonly chords: Float64Array;
}

/**
 * A rail that turns by more than this (radians, 20°) at a point has a corner there: a smooth one is sampled far
 * finer.
 */
const CORNER = Math.PI / 9;

export const railOf = (points: readonly Point3[]): Rail => {
  const count = points.length;
  if (count === 0) throw new RangeError('a rail needs a point');
  const at = new Float64Array(3 * count);
  for (let i = 0; i < count; i++) {
    const { x, y, z } = points[i]!;
    at[3 * i] = x;
    at[3 * i + 1] = y;
    at[3 * i + 2] = z;
  }
  const into = new Float64Array(3 * count);
  const out = new Float64Array(3 * count);
  const rail = { count, at, into, out, corner: new Uint8Array(count), chords: chordsOf(at) };
  directChords(rail);
  for (let i = 1; i < count - 1; i++) bend(rail, i);
  directEnds(rail);
  return rail;
};

/** Points of a rail, chosen by their places in it; they keep the directions that they have in the whole. */
export const thinned = (rail: Rail, places: readonly number[]): Rail => {
  const pick = (from: Float64Array) => {
    const to = new Float64Array(3 * places.length);
    for (let k = 0; k < places.length; k++) {
      const i = 3 * places[k]!;
      to[3 * k] = from[i]!;
      to[3 * k + 1] = from[i + 1]!;
      to[3 * k + 2] = from[i + 2]!;
    }
    return to;
  };
  const at = pick(rail.at);
  const corner = Uint8Array.from(places, (i) => rail.corner[i]!);
  return {
    count: places.length,
    at,
    into: pick(rail.into),
    out: pick(rail.out),
    corner,
    chords: chordsOf(at),
  };
};

const chordsOf = (at: Float64Array): Float64Array => {
  const chords = new Float64Array(at.length / 3 - 1);
  for (let i = 0; i < chords.length; i++) {
    const k = 3 * i;
    const [x, y, z] = [at[k + 3]! - at[k]!, at[k + 4]! - at[k + 1]!, at[k + 5]! - at[k + 2]!];
    chords[i] = Math.sqrt(x * x + y * y + z * z);
  }
  return chords;
};

/** Every point's way in and way out along its chords. */
const directChords = ({ chords, at, into, out }: Rail): void => {
  for (let i = 0; i < chords.length; i++) {
    const length = chords[i]! > 0 ? chords[i]! : 1;
    for (let k = 3 * i; k < 3 * i + 3; k++) {
      const along = (at[k + 3]! - at[k]!) / length;
      out[k] = along;
      into[k + 3] = along;
    }
  }
};

/** Gives an inner point the one direction of the parabola through it and its neighbours, unless it is a corner. */
const bend = ({ chords, into, out, corner }: Rail, i: number): void => {
  const [a, b] = [chords[i - 1]!, chords[i]!];
  const k = 3 * i;
  const turn = into[k]! * out[k]! + into[k + 1]! * out[k + 1]! + into[k + 2]! * out[k + 2]!;
  // A point that stands twice is one point, whose ways in and out lie apart in the row: a corner to be safe.
  if (!(turn >= Math.cos(CORNER))) {
    corner[i] = 1;
    return;
  }
  const [x, y, z] = [
    b * into[k]! + a * out[k]!,
    b * into[k + 1]! + a * out[k + 1]!,
    b * into[k + 2]! + a * out[k + 2]!,
  ];
  const length = Math.sqrt(x * x + y * y + z * z);
  into[k] = out[k] = x / length;
  into[k + 1] = out[k + 1] = y / length;
  into[k + 2] = out[k + 2] = z / length;
};

/** The ends' directions: on a circle the end leans off its chord as far as the next point does, to the other side. */
const directEnds = ({ count, into, out, corner }: Rail): void => {
  if (count < 2) return;
  const last = 3 * (count - 1);
  const smoothStart = count > 2 && corner[1] === 0;
  const smoothEnd = count > 2 && corner[count - 2] === 0;
  const start = smoothStart ? reflected(into, 3, out, 0) : out.slice(0, 3);
  const end = smoothEnd ? reflected(out, last - 3, into, last) : into.slice(last);
  for (let k = 0; k < 3; k++) {
    into[k] = out[k] = start[k]!;
    into[last + k] = out[last + k] = end[k]!;
  }
};

/** A unit vector seen from the other side of a unit axis, both read at a place in a row of numbers. */
const reflected = (row: Float64Array, i: number, axes: Float64Array, k: number): Float64Array => {
  const along = row[i]! * axes[k]! + row[i + 1]! * axes[k + 1]! + row[i + 2]! * axes[k + 2]!;
  return Float64Array.from([0, 1, 2], (c) => 2 * along * axes[k + c]! - row[i + c]!);
};
