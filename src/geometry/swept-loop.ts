import { isShort, reversedCurve } from './curve.ts';
import { selfCrossings } from './intersect.ts';
import { curveLength, stretch } from './measure.ts';
import { type Labelled, outerLoop, TAIL } from './outer-loop.ts';
import { type Curve, line } from './path.ts';
import { distance, type Point } from './point.ts';
import type { Joint, Strand } from './strand.ts';
import { SAME_POINT } from './tolerance.ts';

/** The loop around all that the edges sweep, for when joints alone do not settle it. */
export const sweptLoop = (strands: readonly Strand[], joints: readonly Joint[]): readonly Labelled[] => {
  const swept = outerLoop(roughLoop(strands, joints, true));
  if (swept.isWhole) return withoutTails(swept.loop);
  // A step to a wider edge that starts with a tight curve can have its border on a backward piece.
  const plain = outerLoop(roughLoop(strands, joints, false));
  return withoutTails(plain.loop.length > 0 ? plain.loop : swept.loop);
};

/**
 * The loop with what is left of a swallow's tail cut off where its two branches cross: too short to be cut in cloth, and
 * too thin for the winding to be told on either side of it.
 */
const withoutTails = (loop: readonly Labelled[]): readonly Labelled[] => {
  // Is nothing left? Then there is no tail.
  if (loop.length === 0) return loop;
  const tail = selfCrossings(loop.map(({ curve }) => curve)).find(
    ({ onA, onB }) => Math.abs(onB - onA) < TAIL,
  );
  if (!tail) return loop;
  return withoutTails([...partOf(loop, 0, tail.onA), ...partOf(loop, tail.onB, Number.POSITIVE_INFINITY)]);
};

/** The part of a loop between two distances along it, mm, each curve with its edge. */
const partOf = (loop: readonly Labelled[], from: number, to: number): Labelled[] => {
  let start = 0;
  return loop.flatMap((entry): Labelled[] => {
    const length = curveLength(entry.curve);
    const [a, b] = [Math.max(from - start, 0), Math.min(to - start, length)];
    start += length;
    if (!(b - a > SAME_POINT)) return [];
    return stretch([entry.curve], a, b).map((curve) => ({ ...entry, curve }));
  });
};

/**
 * The whole parallels, led through the corners of the outline where they overlap. Everything within reach of an edge
 * is swept at least once, all in one sense, so that the true parallel is the border of what has a positive winding.
 */
const roughLoop = (strands: readonly Strand[], joints: readonly Joint[], turnsOver: boolean): Labelled[] =>
  strands.flatMap((strand, i) => {
    const next = strands[(i + 1) % strands.length]!;
    const { edge } = strand;
    const [from, to] = [strand.pieces.at(-1)!.curve.to, next.pieces[0]!.curve.from];
    const joint = joints[i]!;
    const through = joint.fills ? joint.clean!.curves : cornerLines(edge, from, joint.corner, to);
    return [
      ...strand.pieces.flatMap(({ curve, past }): Labelled[] =>
        past && turnsOver
          ? turnedOver(curve, past).map((helper) => ({ edge, curve: helper, helps: true }))
          : [{ edge, curve }],
      ),
      ...through,
    ];
  });

/**
 * In place of a backward piece: normals that pass the centres of curvature sweep what lies beyond in the wrong sense.
 * So the way goes along the centres, then around what lies beyond them the other way.
 */
const turnedOver = (piece: Curve, [first, last]: readonly [Point, Point]): Curve[] => {
  const centres = [line(piece.from, first), line(first, last), line(last, piece.to)];
  return [...centres, reversedCurve(piece), ...centres].filter((curve) => !isShort(curve));
};

const cornerLines = (edge: number, from: Point, corner: Point, to: Point): Labelled[] =>
  distance(from, to) <= SAME_POINT
    ? []
    : [line(from, corner), line(corner, to)].map((curve) => ({ edge, curve }));
