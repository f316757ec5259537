import { EDGE, type NoFit } from './no-fit.ts';

/** The way out of the last overlap that was measured, x and y, mm: written by penetration. */
export const wayOut = new Float64Array(2);

/**
 * How deep a point lies in a no-fit polygon, mm: the shortest shift that ends the overlap; 0 outside. The shift itself
 * is left in wayOut. (The penetration depth by which Imamichi, Yagiura and Nagamochi 2009 and Umetani et al. 2009
 * measure overlap.)
 */
export const penetration = ({ convex, edges }: NoFit, x: number, y: number): number =>
  convex ? depthInConvex(edges, x, y) : isInside(edges, x, y) ? depthInside(edges, x, y) : 0;

const depthInConvex = (edges: Float64Array, x: number, y: number): number => {
  let least = Infinity;
  let at = 0;
  for (let e = 0; e < edges.length; e += EDGE) {
    const depth = edges[e + 2]! - edges[e]! * x - edges[e + 1]! * y;
    if (depth <= 0) return 0;
    if (depth < least) {
      least = depth;
      at = e;
    }
  }
  wayOut[0] = edges[at]! * least;
  wayOut[1] = edges[at + 1]! * least;
  return least;
};

const isInside = (edges: Float64Array, x: number, y: number): boolean => {
  let inside = false;
  for (let e = 0; e < edges.length; e += EDGE) {
    const ay = edges[e + 1]!;
    const by = edges[e + 3]!;
    if (ay > y === by > y) continue;
    const ax = edges[e]!;
    if ((edges[e + 2]! - ax) * (y - ay) > (x - ax) * (by - ay) === by > ay) inside = !inside;
  }
  return inside;
};

const depthInside = (edges: Float64Array, x: number, y: number): number => {
  let least = Infinity;
  let outX = 0;
  let outY = 0;
  for (let e = 0; e < edges.length; e += EDGE) {
    const ax = edges[e]! - x;
    const ay = edges[e + 1]! - y;
    const dx = edges[e + 2]! - x - ax;
    const dy = edges[e + 3]! - y - ay;
    let t = -(ax * dx + ay * dy) * edges[e + 4]!;
    t = t < 0 ? 0 : Math.min(t, 1);
    const px = ax + t * dx;
    const py = ay + t * dy;
    const squared = px * px + py * py;
    if (squared < least) {
      least = squared;
      outX = px;
      outY = py;
    }
  }
  wayOut[0] = outX;
  wayOut[1] = outY;
  return Math.sqrt(least);
};
