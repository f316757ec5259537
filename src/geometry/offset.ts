import { areaOf } from './area.ts';
import type { CornerShape } from './corner.ts';
import { curvePart, endingAt, isShort } from './curve.ts';
import { curveLength } from './measure.ts';
import type { Labelled } from './outer-loop.ts';
import { parallel } from './parallel.ts';
import { type Curve, line, type Path } from './path.ts';
import { cross, distance, dot, norm, subtract } from './point.ts';
import { crossesItself } from './self-crossing.ts';
import { type Joint, jointBetween, type Strand } from './strand.ts';
import { sweptLoop } from './swept-loop.ts';
import { SAME_POINT } from './tolerance.ts';

export type { CornerShape } from './corner.ts';

/** One edge of an outline: how far outside it its cut line lies, mm (− inside), and the shape of the corner after it. */
export interface OffsetEdge {
  readonly path: Path;
  readonly by: number;
  readonly corner?: CornerShape;
}

/**
 * The parallel of a closed counter-clockwise outline, one path an edge; together they are closed again. Each edge's
 * parallel runs on as far as its corners ask; what else a corner (mitred unless said otherwise) or the step to another
 * width needs belongs to the edge before it. Lines and arcs have
 * their true parallels; cubics are followed within OFFSET. Hollow corners are cut where the parallels cross. What
 * the parallel cannot reach is left out: an edge that vanishes gets an empty path, and so do all where nothing is
 * left; where an outline falls apart, the largest part stays.
 * Throws RangeError for an outline that is not closed or not counter-clockwise, and for a width that is no number.
 */
export const offsetOutline = (edges: readonly OffsetEdge[]): Path[] => {
  const strands = strandsOf(edges);
  const joints = strands.map((strand, i) => jointBetween(strand, strands[(i + 1) % strands.length]!));
  const loop = neatLoop(strands, joints) ?? straightened(sweptLoop(strands, joints));
  return byEdge(closeGaps(loop), edges.length);
};

const strandsOf = (edges: readonly OffsetEdge[]): Strand[] => {
  const outline = edges.flatMap((edge) => edge.path).filter((curve) => !isShort(curve));
  if (outline.length === 0) throw new RangeError('an outline without length has no parallel');
  const isChain = outline.every(
    (c, i) => distance(c.to, outline[(i + 1) % outline.length]!.from) <= 10 * SAME_POINT,
  );
  if (!isChain) throw new RangeError('an outline must be a closed chain of edges');
  if (!(areaOf(outline) > 0)) throw new RangeError('an outline must run counter-clockwise');
  return edges.flatMap(({ path, by, corner = 'mitred' }, edge) => {
    if (!Number.isFinite(by)) throw new RangeError(`the width of edge ${edge} is not a number`);
    return path
      .filter((curve) => !isShort(curve))
      .map((curve) => ({ edge, by, corner, curve, pieces: parallel(curve, by) }));
  });
};

/** The loop with every joint as it was found, or nothing where one was not, or where cuts or crossings are left over. */
const neatLoop = (strands: readonly Strand[], joints: readonly Joint[]): Labelled[] | undefined => {
  const loop: Labelled[] = [];
  for (const [i, strand] of strands.entries()) {
    const joint = joints[i]!;
    const previous = joints[(i + joints.length - 1) % joints.length]!;
    if (!joint.clean || strand.pieces.some(({ past }) => past)) return undefined;
    const start = previous.clean?.after ?? { piece: 0, t: 0 };
    const end = joint.clean.before ?? { piece: strand.pieces.length - 1, t: 1 };
    if (start.piece > end.piece || (start.piece === end.piece && !(start.t < end.t))) return undefined;
    for (let k = start.piece; k <= end.piece; k++) {
      const [t0, t1] = [k === start.piece ? start.t : 0, k === end.piece ? end.t : 1];
      if (t0 < t1) loop.push({ edge: strand.edge, curve: curvePart(strand.pieces[k]!.curve, t0, t1) });
    }
    loop.push(...joint.clean.curves);
  }
  const neat = straightened(loop);
  return crossesItself(neat.map(({ curve }) => curve)) ? undefined : neat;
};

/** Lines of one edge that run on in one direction made one, and curves without length left out. */
const straightened = (loop: readonly Labelled[]): Labelled[] => {
  const result: Labelled[] = [];
  for (const entry of loop) {
    if (isShort(entry.curve)) continue;
    const last = result.at(-1);
    if (last && last.edge === entry.edge && runsStraightOn(last.curve, entry.curve)) {
      result[result.length - 1] = { edge: entry.edge, curve: line(last.curve.from, entry.curve.to) };
    } else result.push(entry);
  }
  // The loop can begin in the middle of a line.
  const [first, last] = [result[0], result.at(-1)];
  if (
    first &&
    last &&
    first !== last &&
    first.edge === last.edge &&
    runsStraightOn(last.curve, first.curve)
  ) {
    result[0] = { edge: first.edge, curve: line(last.curve.from, first.curve.to) };
    result.pop();
  }
  return result;
};

const runsStraightOn = (a: Curve, b: Curve): boolean => {
  if (a.kind !== 'line' || b.kind !== 'line') return false;
  const [along, on] = [subtract(a.to, a.from), subtract(b.to, b.from)];
  return (
    dot(along, on) > 0 && Math.abs(cross(along, on)) <= (SAME_POINT * Math.max(norm(along), norm(on))) / 10
  );
};

/** Ends that are one point but for rounding made one, and curves without length left out. */
const closeGaps = (loop: readonly Labelled[]): Labelled[] => {
  const long = loop.filter(({ curve }) => !isShort(curve));
  return long.map((entry, i) => {
    const { from } = long[(i + 1) % long.length]!.curve;
    const { to } = entry.curve;
    return to.x === from.x && to.y === from.y
      ? entry
      : { edge: entry.edge, curve: endingAt(entry.curve, from) };
  });
};

/** The curves of the loop, edge by edge. */
const byEdge = (loop: readonly Labelled[], count: number): Path[] => {
  const paths: Curve[][] = Array.from({ length: count }, () => []);
  // Begin where an edge begins, so that no run is cut in two.
  const first = loop.findIndex(({ edge }, i) => edge !== loop[(i + loop.length - 1) % loop.length]!.edge);
  const turned = first > 0 ? [...loop.slice(first), ...loop.slice(0, first)] : loop;
  for (const { edge, curve } of wholeRuns(turned)) paths[edge]!.push(curve);
  return paths;
};

/** The loop with each edge in one run: where another edge's parallel breaks in, the shorter runs go to the edge before. */
const wholeRuns = (loop: readonly Labelled[]): readonly Labelled[] => {
  const runs: Labelled[][] = [];
  for (const entry of loop) {
    const last = runs.at(-1);
    if (last && last[0]!.edge === entry.edge) last.push(entry);
    else runs.push([entry]);
  }
  if (new Set(runs.map((run) => run[0]!.edge)).size === runs.length) return loop;
  const lengths = runs.map((run) => run.reduce((sum, { curve }) => sum + curveLength(curve), 0));
  const isMain = runs.map((run, i) =>
    runs.every((other, j) => other[0]!.edge !== run[0]!.edge || lengths[j]! < lengths[i]! || i === j),
  );
  const start = Math.max(isMain.indexOf(true), 0);
  let edge = runs[start]![0]!.edge;
  return runs.flatMap((_, k) => {
    const i = (start + k) % runs.length;
    if (isMain[i]) edge = runs[i]![0]!.edge;
    return runs[i]!.map(({ curve }) => ({ edge, curve }));
  });
};
