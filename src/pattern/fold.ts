import { boundsOf } from '../geometry/bounds.ts';
import { pathLength, pointAt } from '../geometry/measure.ts';
import { type Line, line, type Path, pathEnd, pathStart } from '../geometry/path.ts';
import { add, between, type Point, point } from '../geometry/point.ts';
import { ON_FOLD } from '../geometry/tolerance.ts';
import { FOLD_EDGE } from './fold-edge.ts';
import { marksOnHalf } from './fold-marks.ts';
import type { Dimension, Edge, Notch, Piece } from './piece.ts';
import { type Run, rightOfFold } from './right-of-fold.ts';

/** The right-hand half of a symmetric piece, to be laid with x = 0 on the fold of the cloth. */
export interface HalfPiece {
  /** Its outline is closed by FOLD_EDGE, downwards along x = 0, without allowance. */
  readonly piece: Piece;
  /** The cut line from the foot of the fold counter-clockwise to its head: open, the fold is not cut. */
  readonly cut: readonly Path[];
  /** From the head of the cut line down to its foot. */
  readonly fold: Line;
}

/** Half of this much at the fold is kept free for its bracket and words, mm. */
const BESIDE_FOLD = 16;

/**
 * A foldable piece and its cut line, halved. Because the whole cut line is clipped, a corner on the fold comes out as
 * the mirror image that the cloth will show. What lies to the right is kept, and what lies on the fold; a distance
 * across the fold keeps its whole figure. Throws RangeError where the piece is not one strip about x = 0.
 */
export const halved = (piece: Piece, cut: readonly Path[]): HalfPiece => {
  if (!piece.foldable) throw new RangeError(`${piece.id} cannot be cut on the fold`);
  const edges = inChain(
    piece.outline.flatMap((edge) => edgeRuns(edge)),
    piece.id,
  );
  const [foot, head] = [pathStart(edges[0]!.edge.path), pathEnd(edges.at(-1)!.edge.path)];
  const cutRuns = rightOfFold(cut.flat());
  if (cutRuns.length !== 1) throw new RangeError(`${piece.id}: the cut line meets the fold more than twice`);
  const cutHalf = cutRuns[0]!.path;
  const half: Piece = {
    ...piece,
    foldable: false,
    outline: [...edges.map((e) => e.edge), { name: FOLD_EDGE, kind: 'none', path: [line(head, foot)] }],
    grain: grainOnHalf(piece.grain),
    notches: notchesOnHalf(piece, edges),
    centreLines: piece.centreLines.flatMap((path) => rightOfFold(path).map((run) => run.path)),
    marks: marksOnHalf(piece.marks),
    labelAt: labelOnHalf(piece),
    dimensions: piece.dimensions.flatMap(dimensionOnHalf),
  };
  return { piece: half, cut: [cutHalf], fold: line(pathEnd(cutHalf), pathStart(cutHalf)) };
};

interface EdgeRun {
  readonly edge: Edge;
  readonly run: Run;
}

const edgeRuns = (edge: Edge): EdgeRun[] =>
  rightOfFold(edge.path).map((run) => ({ edge: { ...edge, path: run.path }, run }));

/** The edges in order from the foot of the fold, where the first begins, to its head. */
const inChain = (edges: readonly EdgeRun[], id: string): readonly EdgeRun[] => {
  const starts = edges.flatMap((e, i) => (pathStart(e.edge.path).x === 0 ? [i] : []));
  if (starts.length !== 1) throw new RangeError(`${id}: the outline meets the fold other than twice`);
  return [...edges.slice(starts[0]), ...edges.slice(0, starts[0])];
};

const notchesOnHalf = (piece: Piece, edges: readonly EdgeRun[]): Notch[] => {
  const found = piece.notches.flatMap((notch) => {
    const whole = piece.outline.find((e) => e.name === notch.edge)!.path;
    const at = pointAt(whole, notch.at);
    if (at.x < -ON_FOLD) return [];
    if (Math.abs(at.x) <= ON_FOLD) return [onFold(notch, at, edges)];
    const length = pathLength(whole);
    for (const { run } of edges.filter((e) => e.edge.name === notch.edge)) {
      const mm = notch.at - run.from;
      const along = mm < -ON_FOLD ? mm + length : mm;
      if (along <= run.length + ON_FOLD) return [{ ...notch, at: Math.min(Math.max(along, 0), run.length) }];
    }
    return [];
  });
  const seen = new Set<string>();
  return found.filter((n) => !seen.has(keyOf(n)) && seen.add(keyOf(n)));
};

const keyOf = (n: Notch): string => `${n.edge} ${n.at} ${n.name}`;

/** A notch on the fold belongs to the half's first edge or its last, whichever end of the fold it is at. */
const onFold = (notch: Notch, at: Point, edges: readonly EdgeRun[]): Notch => {
  const [first, last] = [edges[0]!.edge, edges.at(-1)!.edge];
  const low = Math.abs(at.y - pathStart(first.path).y) < Math.abs(at.y - pathEnd(last.path).y);
  return low
    ? { ...notch, edge: first.name, at: 0 }
    : { ...notch, edge: last.name, at: pathLength(last.path) };
};

/** A grain line that lay across the fold or too near it is moved to the right, and shortened where it must be. */
const grainOnHalf = ([from, to]: Piece['grain']): Piece['grain'] => {
  const [low, high] = [Math.min(from.x, to.x), Math.max(from.x, to.x)];
  if (low >= BESIDE_FOLD) return [from, to];
  const upright = high - low <= ON_FOLD;
  // Is all of it on the other side? Then it has a mirror image on this one.
  if (upright && high <= -BESIDE_FOLD) return [point(-from.x, from.y), point(-to.x, to.y)];
  // Is it level? Then its right half is on the piece, or as much as can be seen.
  if (Math.abs(to.y - from.y) <= ON_FOLD) {
    const reach = Math.max(high, 2 * BESIDE_FOLD);
    const at = (p: Point): Point => point(p.x === low ? BESIDE_FOLD : reach, p.y);
    return [at(from), at(to)];
  }
  const aside = point(BESIDE_FOLD - low, 0);
  return [add(between(from, to, 0.15), aside), add(between(to, from, 0.15), aside)];
};

const labelOnHalf = ({ labelAt, outline }: Piece): Point => {
  const wide = boundsOf(outline.flatMap((e) => e.path)).max.x;
  const x = Math.abs(labelAt.x);
  return point(x < wide * 0.2 ? wide * 0.45 : x, labelAt.y);
};

const dimensionOnHalf = (dimension: Dimension): Dimension[] => {
  const { along } = dimension;
  const { min, max } = boundsOf(along);
  // On the fold, or all to the right of it?
  if (min.x >= -ON_FOLD) return [dimension];
  if (max.x <= ON_FOLD) return [];
  const mm = dimension.mm ?? pathLength(along);
  return rightOfFold(along).map((run) => ({ ...dimension, along: run.path, mm }));
};
