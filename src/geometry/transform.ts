import { arcToCubics } from './arc-to-cubics.ts';
import { reversed } from './measure.ts';
import { type Curve, cubic, line, type Path } from './path.ts';
import { add, ORIGIN, type Point, point, rotate } from './point.ts';

/** Every point of the curve moved by a map that keeps circles circles; `turn` is -1 where it mirrors. */
const moved = (curve: Curve, map: (p: Point) => Point, turn: 1 | -1): Curve => {
  const [from, to] = [map(curve.from), map(curve.to)];
  if (curve.kind === 'line') return line(from, to);
  if (curve.kind === 'arc')
    return { kind: 'arc', from, to, centre: map(curve.centre), sweep: turn * curve.sweep };
  return cubic(from, map(curve.c1), map(curve.c2), to);
};

/** The path carried along by a vector, mm. */
export const translated = (path: Path, v: Point): Path =>
  path.map((curve) => moved(curve, (p) => add(p, v), 1));

/** The path turned about a centre, radians, + counter-clockwise. */
export const rotated = (path: Path, angle: number, centre: Point = ORIGIN): Path =>
  path.map((curve) => moved(curve, (p) => rotate(p, angle, centre), 1));

/** The path mirrored in the line x = 0 and walked backwards, so that a counter-clockwise outline stays one. */
export const mirrored = (path: Path): Path =>
  reversed(path.map((curve) => moved(curve, ({ x, y }) => point(0 - x, y), -1)));

/**
 * The path stretched about the origin, kx across and ky up. Arcs stay arcs where the two are of one size; otherwise
 * they become cubics, with their error (ARC_AS_CUBIC) stretched too. A negative factor mirrors and keeps the order.
 */
export const scaled = (path: Path, kx: number, ky: number): Path => {
  const map = ({ x, y }: Point): Point => point(kx * x, ky * y);
  const round = Math.abs(kx) === Math.abs(ky);
  const turn = kx * ky < 0 ? -1 : 1;
  return path.flatMap((curve) =>
    curve.kind === 'arc' && !round
      ? arcToCubics(curve).map((c) => moved(c, map, turn))
      : [moved(curve, map, turn)],
  );
};
