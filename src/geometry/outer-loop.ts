import { areaOf } from './area.ts';
import { boundsOf } from './bounds.ts';
import { type Box, boxesMeet } from './box.ts';
import { curveAt, curvePart, directionAt } from './curve.ts';
import { curveCrossings } from './curve-crossings.ts';
import { windingAround } from './inside.ts';
import { curveLength } from './measure.ts';
import type { Curve } from './path.ts';
import { add, distance, left, scale, subtract } from './point.ts';
import { SAME_POINT } from './tolerance.ts';

/** A curve of a loop and the edge it belongs to. One that only helps to close the chain can be no border. */
export interface Labelled {
  readonly edge: number;
  readonly curve: Curve;
  readonly helps?: boolean;
}

/** How far off a curve to look which side of it is inside, mm. */
const ASIDE = 10 * SAME_POINT;
/** How far apart the ends of two parts can be that met at a crossing, mm: crossings at a slant are known less well. */
const LINKED = 1e-3;

/**
 * The largest counter-clockwise loop around what a self-crossing closed chain encloses counter-clockwise; empty where
 * it encloses nothing so.
 */
export const outerLoop = (chain: readonly Labelled[]): Labelled[] => {
  const path = chain.map(({ curve }) => curve);
  const isBorder = (curve: Curve): boolean => {
    const aside = scale(left(directionAt(curve, 0.5)), ASIDE);
    const middle = curveAt(curve, 0.5);
    return windingAround(path, add(middle, aside)) > 0 && !(windingAround(path, subtract(middle, aside)) > 0);
  };
  const border = splitAtCrossings(chain).filter(({ curve, helps }) => !helps && isBorder(curve));
  const loops = loopsOf(border).map((loop) => ({ loop, area: areaOf(loop.map(({ curve }) => curve)) }));
  const largest = loops.sort((p, q) => q.area - p.area)[0];
  return largest && largest.area > 0 ? largest.loop : [];
};

const splitAtCrossings = (chain: readonly Labelled[]): Labelled[] => {
  const boxes = chain.map(({ curve }): Box => boundsOf([curve]));
  const knots = chain.map((): number[] => [0, 1]);
  chain.forEach((a, i) => {
    for (let j = i + 1; j < chain.length; j++) {
      if (!boxesMeet(boxes[i]!, boxes[j]!)) continue;
      for (const { t, u } of curveCrossings(a.curve, chain[j]!.curve)) {
        knots[i]!.push(t);
        knots[j]!.push(u);
      }
    }
  });
  return chain.flatMap((entry, i) => {
    const sorted = knots[i]!.sort((p, q) => p - q);
    return sorted.slice(1).flatMap((t1, k) => {
      const t0 = sorted[k]!;
      if (!(t1 - t0 > 1e-12)) return [];
      const curve = curvePart(entry.curve, t0, t1);
      return curveLength(curve) > SAME_POINT ? [{ ...entry, curve }] : [];
    });
  });
};

/** The parts linked end to start into closed loops; parts that lead nowhere are left out. */
const loopsOf = (parts: readonly Labelled[]): Labelled[][] => {
  const rest = [...parts];
  const loops: Labelled[][] = [];
  while (rest.length > 0) {
    const loop = [rest.shift()!];
    for (;;) {
      const end = loop.at(-1)!.curve.to;
      const home = distance(end, loop[0]!.curve.from);
      const gaps = rest.map(({ curve }) => distance(end, curve.from));
      const nearest = gaps.reduce((best, gap, i) => (gap < gaps[best]! ? i : best), 0);
      const gap = gaps[nearest] ?? Infinity;
      if (home <= LINKED && home <= gap + SAME_POINT) {
        loops.push(loop);
        break;
      }
      if (!(gap <= LINKED)) break;
      loop.push(...rest.splice(nearest, 1));
    }
  }
  return loops;
};
