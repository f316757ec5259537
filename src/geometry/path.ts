import { distance, type Point, point } from './point.ts';
import { SAME_POINT } from './tolerance.ts';

export interface Line {
  readonly kind: 'line';
  readonly from: Point;
  readonly to: Point;
}

/** A circular arc. The sweep is in radians, + counter-clockwise; a full turn has from = to. */
export interface Arc {
  readonly kind: 'arc';
  readonly from: Point;
  readonly to: Point;
  readonly centre: Point;
  readonly sweep: number;
}

/** A cubic Bézier curve. */
export interface Cubic {
  readonly kind: 'cubic';
  readonly from: Point;
  readonly c1: Point;
  readonly c2: Point;
  readonly to: Point;
}

export type Curve = Line | Arc | Cubic;

/** Curves in a chain, each starting where the last one ended. Closed when the last ends where the first starts. */
export type Path = readonly Curve[];

export const line = (from: Point, to: Point): Line => ({
  kind: 'line',
  from,
  to,
});

/** An arc about a centre from a start point through a sweep in radians, + counter-clockwise. */
export const arc = (centre: Point, from: Point, sweep: number): Arc => {
  const c = Math.cos(sweep);
  const s = Math.sin(sweep);
  const dx = from.x - centre.x;
  const dy = from.y - centre.y;
  const fullTurn = Math.abs(Math.abs(sweep) - 2 * Math.PI) < 1e-12;
  const to = fullTurn ? from : point(centre.x + dx * c - dy * s, centre.y + dx * s + dy * c);
  return { kind: 'arc', from, to, centre, sweep };
};

export const cubic = (from: Point, c1: Point, c2: Point, to: Point): Cubic => ({
  kind: 'cubic',
  from,
  c1,
  c2,
  to,
});

export const radius = (a: Arc): number => distance(a.from, a.centre);

export const pathStart = (path: Path): Point => path[0]!.from;
export const pathEnd = (path: Path): Point => path[path.length - 1]!.to;
export const isClosed = (path: Path): boolean => distance(pathStart(path), pathEnd(path)) <= SAME_POINT;

/** The chain of straight lines through the points. */
export const polyline = (points: readonly Point[]): Path =>
  points.slice(1).map((to, i) => line(points[i]!, to));

/** The closed chain of straight lines through the points. */
export const polygon = (points: readonly Point[]): Path => polyline([...points, points[0]!]);

/** A full circle, counter-clockwise from its rightmost point. */
export const circle = (centre: Point, r: number): Path => [
  arc(centre, point(centre.x + r, centre.y), 2 * Math.PI),
];
