/** A point or a vector in the plane: millimetres, x to the right, y up. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

export const point = (x: number, y: number): Point => ({ x, y });
export const ORIGIN: Point = point(0, 0);

export const add = (p: Point, q: Point): Point => point(p.x + q.x, p.y + q.y);
export const subtract = (p: Point, q: Point): Point => point(p.x - q.x, p.y - q.y);
export const scale = (p: Point, k: number): Point => point(p.x * k, p.y * k);
/** The point a fraction t of the way from p to q. */
export const between = (p: Point, q: Point, t: number): Point =>
  point(p.x + (q.x - p.x) * t, p.y + (q.y - p.y) * t);
export const dot = (p: Point, q: Point): number => p.x * q.x + p.y * q.y;
/** Positive where q lies counter-clockwise of p. */
export const cross = (p: Point, q: Point): number => p.x * q.y - p.y * q.x;
/** Length of a vector. Math.hypot guards against overflow that millimetres never see, and is many times slower. */
export const norm = (p: Point): number => Math.sqrt(p.x * p.x + p.y * p.y);
export const distance = (p: Point, q: Point): number => norm(subtract(p, q));
export const unit = (p: Point): Point => scale(p, 1 / norm(p));
/** Radians counter-clockwise from the x axis, in (-π, π]. */
export const direction = (p: Point): number => Math.atan2(p.y, p.x);
/** The unit vector at an angle, radians counter-clockwise from the x axis. */
export const heading = (angle: number): Point => point(Math.cos(angle), Math.sin(angle));
/** The vector turned a quarter counter-clockwise: the left-hand normal. */
export const left = (p: Point): Point => point(-p.y, p.x);
/** p turned about a centre, radians, + counter-clockwise. */
export const rotate = (p: Point, angle: number, centre: Point = ORIGIN): Point => {
  const c = Math.cos(angle);
  const s = Math.sin(angle);
  const { x, y } = subtract(p, centre);
  return point(centre.x + x * c - y * s, centre.y + x * s + y * c);
};
