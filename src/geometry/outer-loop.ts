import { areaOf } from './area.ts';
import { boundsOf } from './bounds.ts';
import { type Box, boxesMeet } from './box.ts';
import { curveAt, curvePart, directionAt } from './curve.ts';
import { curveCrossings } from './curve-crossings.ts';
import { windingAround } from './inside.ts';
import { curveLength } from './measure.ts';
import { type Curve, line } from './path.ts';
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
/** Ends closer than this are one crossing, mm: what is crossed at a slant is known less well. */
const MET = 10 * SAME_POINT;
/**
 * Where a parallel only just turns back, its two branches cross in a swallow's tail that can be thinner than the
 * cubics fitted to it are right, and so be lost, and leave a gap as long as the tail, mm.
 */
export const TAIL = 0.5;

/** A loop, and whether everything that bounds what is enclosed was found to close. */
export interface OuterLoop {
  readonly loop: readonly Labelled[];
  readonly isWhole: boolean;
}

/**
 * The largest counter-clockwise loop around what a self-crossing closed chain encloses counter-clockwise; empty where
 * it encloses nothing so.
 */
export const outerLoop = (chain: readonly Labelled[]): OuterLoop => {
  const path = chain.map(({ curve }) => curve);
  const isBorder = (curve: Curve): boolean => {
    const aside = scale(left(directionAt(curve, 0.5)), ASIDE);
    const middle = curveAt(curve, 0.5);
    return windingAround(path, add(middle, aside)) > 0 && !(windingAround(path, subtract(middle, aside)) > 0);
  };
  const border = splitAtCrossings(chain).filter(({ curve, helps }) => !helps && isBorder(curve));
  const { closed, isWhole } = loopsOf(border);
  const loops = closed.map((loop) => ({ loop, area: areaOf(loop.map(({ curve }) => curve)) }));
  const largest = loops.sort((p, q) => q.area - p.area)[0];
  return { loop: largest && largest.area > 0 ? largest.loop : [], isWhole };
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

/**
 * The parts linked end to start into closed loops; parts that lead nowhere are left out. A short gap is bridged by a
 * line.
 */
const loopsOf = (parts: readonly Labelled[]): { closed: Labelled[][]; isWhole: boolean } => {
  const rest = [...parts];
  const closed: Labelled[][] = [];
  let isWhole = true;
  while (rest.length > 0) {
    const loop = [rest.shift()!];
    for (;;) {
      const { edge, curve } = loop.at(-1)!;
      const gaps = [...rest, loop[0]!].map((next) => distance(curve.to, next.curve.from));
      // Home, the last of them, is preferred where it is as near as any.
      const nearest = gaps.reduce((best, gap, i) => (gap < gaps[best]! ? i : best), gaps.length - 1);
      if (!(gaps[nearest]! <= TAIL)) {
        isWhole = false;
        break;
      }
      const isHome = nearest === rest.length;
      const next = isHome ? loop[0]! : rest.splice(nearest, 1)[0]!;
      if (gaps[nearest]! > MET) loop.push({ edge, curve: line(curve.to, next.curve.from) });
      if (isHome) {
        closed.push(loop);
        break;
      }
      loop.push(next);
    }
  }
  return { closed, isWhole };
};
