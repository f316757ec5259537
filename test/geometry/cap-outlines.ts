import { reversed } from '../../src/geometry/measure.ts';
import { arc, type Curve, circle, cubic, line, type Path, polygon } from '../../src/geometry/path.ts';
import { ORIGIN, point } from '../../src/geometry/point.ts';
import { scaled } from '../../src/geometry/transform.ts';

/** Outlines of the shapes that cap pieces have, mm, one curve an edge. */
const edgesOf = (path: Path): Path[] => path.map((curve: Curve) => [curve]);

export const rectangle = (width: number, height: number): Path[] =>
  edgesOf(polygon([ORIGIN, point(width, 0), point(width, height), point(0, height)]));

/** A ring sector, its inner edge first. */
export const ringSector = (inner: number, outer: number, sweep: number): Path[] => {
  const on = (r: number, angle: number) => point(r * Math.cos(angle), r * Math.sin(angle));
  const inside = arc(ORIGIN, on(inner, sweep), -sweep);
  const outside = arc(ORIGIN, on(outer, 0), sweep);
  return edgesOf([inside, line(inside.to, outside.from), outside, line(outside.to, inside.from)]);
};

/** A crescent of two cubics with sharp tips, 180 mm from tip to tip, as a visor has. */
export const crescent: Path[] = [
  [cubic(point(-90, 0), point(-70, -90), point(70, -90), point(90, 0))],
  [cubic(point(90, 0), point(50, -50), point(-50, -50), point(-90, 0))],
];

export const oval = (halfBreadth: number, halfLength: number): Path[] =>
  edgesOf(scaled(circle(ORIGIN, 1), halfBreadth, halfLength));

export const round = (r: number): Path[] => edgesOf(circle(ORIGIN, r));

/** A visor whose tips are rounded by arcs of a radius, tangent to a straight inner edge: for inward clearances. */
export const roundedBar = (length: number, breadth: number, r: number): Path[] => {
  const quarter = (x: number, y: number, angle: number): Curve =>
    arc(point(x, y), point(x + r * Math.cos(angle), y + r * Math.sin(angle)), Math.PI / 2);
  const corners = [
    quarter(length - r, r, -Math.PI / 2),
    quarter(length - r, breadth - r, 0),
    quarter(r, breadth - r, Math.PI / 2),
    quarter(r, r, Math.PI),
  ];
  return edgesOf(corners.flatMap((c, i) => [line(corners[(i + 3) % 4]!.to, c.from), c]));
};

/** The same outline walked clockwise. */
export const clockwise = (edges: readonly Path[]): Path[] => [...edges].reverse().map(reversed);
