import paper from 'paper/dist/paper-core';
import type { Path } from '../../geometry/path.ts';
import type { Point } from '../../geometry/point.ts';
import { arcToCubics, walk } from '../../geometry/walk.ts';

/** Point, handle in and handle out of a segment of Paper's. */
type Knot = [number, number, number, number, number, number];

/** A path that lies somewhere on the table, as Paper's own. */
export const paperPath = (path: Path, at: Point): paper.Path => {
  const { knots, closed } = knotsOf(path, at);
  return new paper.Path({ segments: knots, closed, insert: false });
};

/** Gives an item the shape of another path: its segments move, and are made anew only where their number changes. */
export const reshape = (item: paper.Path, path: Path, at: Point): void => {
  const { knots, closed } = knotsOf(path, at);
  item.closed = closed;
  const { segments } = item;
  if (segments.length !== knots.length) {
    item.segments = knots as unknown as paper.Segment[];
    return;
  }
  knots.forEach(([x, y, inX, inY, outX, outY], i) => {
    const { point, handleIn, handleOut } = segments[i]!;
    point.set(x, y);
    if (inX !== handleIn.x || inY !== handleIn.y) handleIn.set(inX, inY);
    if (outX !== handleOut.x || outY !== handleOut.y) handleOut.set(outX, outY);
  });
};

/** Arcs become cubics no eye can tell from them; y turns down. */
const knotsOf = (path: Path, at: Point): { readonly knots: readonly Knot[]; readonly closed: boolean } => {
  const knots: Knot[] = [];
  const moveTo = (p: Point): void => void knots.push([p.x + at.x, -p.y - at.y, 0, 0, 0, 0]);
  const cubicTo = (c1: Point, c2: Point, to: Point): void => {
    const from = knots.at(-1)!;
    from[4] = c1.x + at.x - from[0];
    from[5] = -c1.y - at.y - from[1];
    knots.push([to.x + at.x, -to.y - at.y, c2.x - to.x, to.y - c2.y, 0, 0]);
  };
  let closed = false;
  walk(path, {
    moveTo,
    lineTo: moveTo,
    cubicTo,
    arcTo: (centre, r, startAngle, sweep, to) => {
      const from = { x: centre.x + r * Math.cos(startAngle), y: centre.y + r * Math.sin(startAngle) };
      for (const c of arcToCubics({ kind: 'arc', centre, from, to, sweep })) cubicTo(c.c1, c.c2, c.to);
    },
    close: () => {
      closed = true;
    },
  });
  // The last knot of a closed path is its first again.
  if (closed && knots.length > 2) {
    const last = knots.pop()!;
    knots[0]![2] = last[2];
    knots[0]![3] = last[3];
  }
  return { knots, closed };
};
