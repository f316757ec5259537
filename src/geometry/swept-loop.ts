import { isShort, reversedCurve } from './curve.ts';
import { type Labelled, outerLoop } from './outer-loop.ts';
import { type Curve, line } from './path.ts';
import { distance, type Point } from './point.ts';
import type { Joint, Strand } from './strand.ts';
import { SAME_POINT } from './tolerance.ts';

/** The loop around all that the edges sweep, for when joints alone do not settle it. */
export const sweptLoop = (strands: readonly Strand[], joints: readonly Joint[]): readonly Labelled[] => {
  const swept = outerLoop(roughLoop(strands, joints, true));
  if (swept.isWhole) return swept.loop;
  // A step to a wider edge that starts with a tight curve can have its border on a backward piece.
  const plain = outerLoop(roughLoop(strands, joints, false));
  return plain.loop.length > 0 ? plain.loop : swept.loop;
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
