import { type NoFit, nearestIn } from './no-fit.ts';

/** The way out of the last overlap that was measured, x and y, mm: written by penetration. */
export const wayOut = new Float64Array(2);

/**
 * How deep a point lies in a no-fit polygon, mm: the shortest shift that ends the overlap; 0 outside. The shift itself
 * is left in wayOut. (The penetration depth by which Imamichi, Yagiura and Nagamochi 2009 and Umetani et al. 2009
 * measure overlap.)
 */
export const penetration = (noFit: NoFit, x: number, y: number): number => {
  const { edges, rowStarts, rowEdges } = noFit;
  const across = (y - noFit.y0) * noFit.rowsPerMm;
  if (!(across >= 0 && across < noFit.rows)) return 0;
  const row = across | 0;
  let inside = false;
  for (let k = rowStarts[row]!; k < rowStarts[row + 1]!; k++) {
    const e = rowEdges[k]!;
    const ay = edges[e + 1]!;
    const by = edges[e + 3]!;
    if (ay > y === by > y) continue;
    const ax = edges[e]!;
    if ((edges[e + 2]! - ax) * (y - ay) > (x - ax) * (by - ay) === by > ay) inside = !inside;
  }
  return inside ? depthInside(noFit, row, x, y) : 0;
};

const depthInside = (noFit: NoFit, row: number, x: number, y: number): number => {
  const { edges, lists } = noFit;
  const column = Math.min(noFit.rows - 1, ((x - noFit.x0) * noFit.columnsPerMm) | 0);
  const cell = row * noFit.rows + column;
  const start = lists.starts[cell]! >= 0 ? lists.starts[cell]! : nearestIn(noFit, row, column);
  const end = start + 1 + lists.edges[start]!;
  let least = Infinity;
  let outX = 0;
  let outY = 0;
  for (let k = start + 1; k < end; k++) {
    const e = lists.edges[k]!;
    const ax = edges[e]! - x;
    const ay = edges[e + 1]! - y;
    const dx = edges[e + 2]! - x - ax;
    const dy = edges[e + 3]! - y - ay;
    let t = -(ax * dx + ay * dy) * edges[e + 4]!;
    if (t < 0) t = 0;
    else if (t > 1) t = 1;
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
