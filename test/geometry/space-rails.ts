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

/** The furthest that points, each near the one before, stand from a row of points joined straight. */
const farthest = (points: readonly Point[], to: readonly Point[]): number => {
  const longest = Math.max(...to.slice(1).map((p, i) => distance(p, to[i]!)));
  let [worst, near] = [0, 1];
  for (const p of points) {
    // Start at the chord that was nearest to the point before: most others are ruled out by it at once.
    let least = toChord(p, to[near - 1]!, to[near]!);
    for (let i = 1; i < to.length; ) {
      // From this far off, so many chords lead at best back to as near as is known.
      const chords = Math.floor((distance(p, to[i - 1]!) - least) / longest);
      if (chords < 1) {
        const d = toChord(p, to[i - 1]!, to[i]!);
        if (d < least) [least, near] = [d, i];
      }
      i += Math.max(1, chords);
    }
    worst = Math.max(worst, least);
  }
  return worst;
};

/**
 * The furthest that a path and a dense row of points of the curve it should be stray from one another, ends included,
 * mm.
 */
export const straying = (path: Path, curve: readonly Point[]): number => {
  const drawn = dense(path);
  return Math.max(
    farthest(drawn, curve),
    farthest(curve, drawn),
    distance(drawn[0]!, curve[0]!),
    distance(drawn.at(-1)!, curve.at(-1)!),
  );
};
