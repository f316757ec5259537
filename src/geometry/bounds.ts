import type { Box } from './box.ts';
import { curveAt } from './curve.ts';
import type { Arc, Cubic, Curve, Path } from './path.ts';
import { radius } from './path.ts';
import { direction, type Point, point, subtract } from './point.ts';
import { quadraticChanges } from './roots.ts';

/** The smallest upright rectangle around a path. Of an empty path: turned inside out, as boxOf of no points. */
export const boundsOf = (path: Path): Box => {
  let [x0, y0, x1, y1] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const curve of path) {
    for (const { x, y } of extremes(curve)) {
      if (x < x0) x0 = x;
      if (y < y0) y0 = y;
      if (x > x1) x1 = x;
      if (y > y1) y1 = y;
    }
  }
  return { min: point(x0, y0), max: point(x1, y1) };
};

/** The curve's ends, and where it turns back left, right, up or down. */
const extremes = (curve: Curve): Point[] => {
  const ends = [curve.from, curve.to];
  if (curve.kind === 'line') return ends;
  if (curve.kind === 'arc') return [...ends, ...quarters(curve)];
  return [...ends, ...turningParameters(curve).map((t) => curveAt(curve, t))];
};

/** The points of a circle due east, north, west and south of its centre that lie on the arc. */
const quarters = (a: Arc): Point[] => {
  const r = radius(a);
  const { x, y } = a.centre;
  const compass = [point(x + r, y), point(x, y + r), point(x - r, y), point(x, y - r)];
  const way = Math.sign(a.sweep);
  const start = direction(subtract(a.from, a.centre));
  return compass.filter((_, i) => {
    const turn = ((i * Math.PI) / 2 - start) * way;
    return turn - Math.floor(turn / (2 * Math.PI)) * 2 * Math.PI < Math.abs(a.sweep);
  });
};

/** The parameters inside a cubic where it runs level or upright, in no order. */
const turningParameters = ({ from, c1, c2, to }: Cubic): number[] => [
  ...quadraticChanges(c1.x - from.x, c2.x - c1.x, to.x - c2.x),
  ...quadraticChanges(c1.y - from.y, c2.y - c1.y, to.y - c2.y),
];
