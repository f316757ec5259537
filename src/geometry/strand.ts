import { type CornerShape, type Joining, joiningOf } from './corner.ts';
import { curvePart, directionAt } from './curve.ts';
import { curveCrossings } from './curve-crossings.ts';
import type { Labelled } from './outer-loop.ts';
import type { ParallelPiece } from './parallel.ts';
import { type Curve, type Path, pathEnd, pathStart } from './path.ts';
import { distance, type Point } from './point.ts';
import { OFFSET, SAME_POINT } from './tolerance.ts';

/** The parallel of one curve of the outline. */
export interface Strand {
  readonly edge: number;
  readonly by: number;
  readonly corner: CornerShape;
  readonly curve: Curve;
  readonly pieces: readonly ParallelPiece[];
}

/** A place on a strand: which of its pieces, and the parameter on it. */
interface Cut {
  readonly piece: number;
  readonly t: number;
}

/** What joins a strand to the next, and where that cuts them, if it does. Nothing, where no clean joint was found. */
export interface Joint {
  readonly corner: Point;
  readonly clean?: { readonly curves: readonly Labelled[]; readonly before?: Cut; readonly after?: Cut };
  /** Whether the joint only fills a gap, and so holds whatever becomes of its neighbours. */
  readonly fills: boolean;
}

/** The joint after a strand, at the corner where the next one starts. */
export const jointBetween = (a: Strand, b: Strand): Joint => {
  const corner = a.curve.to;
  const joining = joiningOf({
    at: corner,
    before: directionAt(a.curve, 1),
    after: directionAt(b.curve, 0),
    widthBefore: a.by,
    widthAfter: b.by,
    shape: a.corner,
  });
  if (joining.kind === 'fill') return { corner, clean: { curves: owned(a, b, joining.curves) }, fills: true };
  const isBackwards = a.pieces.at(-1)!.past || b.pieces[0]!.past;
  const clean = isBackwards ? undefined : cutsOf(a, b, joining);
  return clean ? { corner, clean, fills: false } : { corner, fills: false };
};

/** A corner belongs to the edge before it, but for the line by which the next edge's own parallel begins earlier. */
const owned = (a: Strand, b: Strand, curves: readonly Curve[]): Labelled[] => {
  const last = curves.at(-1);
  const along = directionAt(b.curve, 0);
  const isOwn = last?.kind === 'line' && distance(directionAt(last, 0), along) < SAME_POINT;
  return curves.map((curve) => ({ edge: isOwn && curve === last ? b.edge : a.edge, curve }));
};

const cutsOf = (a: Strand, b: Strand, joining: Exclude<Joining, { kind: 'fill' }>): Joint['clean'] => {
  const before = a.pieces.map(({ curve }) => curve);
  const after = b.pieces.map(({ curve }) => curve);
  if (joining.kind === 'cross') {
    const cut = lastCrossing(before, after);
    if (cut) return { curves: [], before: cut.before, after: cut.after };
    // So nearly smooth that there is no crossing to find: the ends are brought together.
    return distance(pathEnd(before), pathStart(after)) <= OFFSET / 4 ? { curves: [] } : undefined;
  }
  if (joining.kind === 'cutBefore') {
    const cut = lastCrossing(before, [joining.start]);
    const rest = cut && curvePart(joining.start, cut.after.t, 1);
    return cut && rest && { curves: owned(a, b, [rest, ...joining.rest]), before: cut.before };
  }
  const cut = lastCrossing([joining.end], after);
  const rest = cut && curvePart(joining.end, 0, cut.before.t);
  return cut && rest && { curves: owned(a, b, [...joining.first, rest]), after: cut.after };
};

/** Where two runs of curves cross, as near as can be to the end of the first and the start of the second. */
const lastCrossing = (a: Path, b: Path): { before: Cut; after: Cut } | undefined => {
  for (let back = 0; back < a.length + b.length - 1; back++) {
    for (let j = Math.max(0, back - a.length + 1); j <= Math.min(back, b.length - 1); j++) {
      const i = a.length - 1 - (back - j);
      const [first] = curveCrossings(a[i]!, b[j]!).sort((p, q) => q.t - p.t);
      if (first) return { before: { piece: i, t: first.t }, after: { piece: j, t: first.u } };
    }
  }
  return undefined;
};
