import { curveAt } from '../../src/geometry/curve.ts';
import { curveLength } from '../../src/geometry/measure.ts';
import type { Path } from '../../src/geometry/path.ts';
import { distance, dot, left, type Point, point, subtract, unit } from '../../src/geometry/point.ts';
import { type Point3, point3 } from '../../src/geometry/space.ts';
import { toChord } from './deviation.ts';

/** A row of points along a curve, `count` steps at equal parameters from 0 to 1. */
export const row = <P>(count: number, at: (t: number) => P): readonly P[] =>
  Array.from({ length: count + 1 }, (_, i) => at(i / count));

/** A point at a radius, an angle and a height. */
export const polar = (r: number, angle: number, z = 0): Point3 =>
  point3(r * Math.cos(angle), r * Math.sin(angle), z);

/**
 * Points moved and turned so that p lies on the origin and q along +x: as an unrolled strip lies, p and q its first
 * ruling.
 */
export const laidOut = (points: readonly Point[], p: Point, q: Point): readonly Point[] => {
  const across = unit(subtract(q, p));
  return points.map((at) => point(dot(subtract(at, p), across), dot(subtract(at, p), left(across))));
};

/** Points at most half a millimetre apart: the chords between them are within 0.001 mm of any edge of a cap. */
const dense = (path: Path): readonly Point[] =>
  path.flatMap((curve) => row(Math.ceil(2 * curveLength(curve)), (t) => curveAt(curve, t)));

/** Distance from a point to a row of points joined straight. */
const toRow = (p: Point, points: readonly Point[], longest: number): number => {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 1; i < points.length; ) {
    const [a, b] = [points[i - 1]!, points[i]!];
    // From this far off, so many chords lead at best back to as near as is known.
    const chords = Math.floor((distance(p, a) - least) / longest);
    if (chords < 1) least = Math.min(least, toChord(p, a, b));
    i += Math.max(1, chords);
  }
  return least;
};

const longestOf = (points: readonly Point[]): number =>
  Math.max(...points.slice(1).map((p, i) => distance(p, points[i]!)));

/**
 * The furthest that a path and a dense row of points of the curve it should be stray from one another, ends included,
 * mm.
 */
export const straying = (path: Path, curve: readonly Point[]): number => {
  const drawn = dense(path);
  const [ofDrawn, ofCurve] = [longestOf(drawn), longestOf(curve)];
  return Math.max(
    ...drawn.map((p) => toRow(p, curve, ofCurve)),
    ...curve.map((p) => toRow(p, drawn, ofDrawn)),
    distance(drawn[0]!, curve[0]!),
    distance(drawn.at(-1)!, curve.at(-1)!),
  );
};
