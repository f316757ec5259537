import paper from 'paper/dist/paper-core';
import type { Path } from '../../geometry/path.ts';
import type { Point } from '../../geometry/point.ts';
import { arcToCubics, walk } from '../../geometry/walk.ts';

/** A path as Paper's own, y down: point, handle in, handle out. Arcs become cubics no eye can tell from them. */
export const paperPath = (path: Path): paper.Path => {
  const knots: [number, number, number, number, number, number][] = [];
  const moveTo = (p: Point): void => void knots.push([p.x, -p.y, 0, 0, 0, 0]);
  const cubicTo = (c1: Point, c2: Point, to: Point): void => {
    const from = knots.at(-1)!;
    from[4] = c1.x - from[0];
    from[5] = -c1.y - from[1];
    knots.push([to.x, -to.y, c2.x - to.x, to.y - c2.y, 0, 0]);
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
  return new paper.Path({ segments: knots, closed, insert: false });
};
