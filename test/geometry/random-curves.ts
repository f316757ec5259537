import fc from 'fast-check';
import {
  type Arc,
  arc,
  type Cubic,
  type Curve,
  cubic,
  type Line,
  line,
  type Path,
} from '../../src/geometry/path.ts';
import { add, distance, left, type Point, point, scale, subtract } from '../../src/geometry/point.ts';

/** Numbers on a fine grid: doubles drawn at random are mostly next to nothing, which no pattern is. */
const between = (min: number, max: number) =>
  fc.integer({ min: Math.round(min * 1e4), max: Math.round(max * 1e4) }).map((n) => n / 1e4);

/** A share from 0 to 1. */
export const anyShare: fc.Arbitrary<number> = between(0, 1);

export const anyPoint: fc.Arbitrary<Point> = fc.record({ x: between(-100, 100), y: between(-100, 100) });

export const anyLine: fc.Arbitrary<Line> = fc
  .tuple(anyPoint, anyPoint)
  .filter(([p, q]) => distance(p, q) > 1)
  .map(([p, q]) => line(p, q));

export const anyArc: fc.Arbitrary<Arc> = fc
  .tuple(anyPoint, anyPoint, between(0.05, 6.2), fc.boolean())
  .filter(([centre, from]) => distance(centre, from) > 1)
  .map(([centre, from, sweep, clockwise]) => arc(centre, from, clockwise ? -sweep : sweep));

/** Any four points: loops and near cusps among them. */
export const anyCubic: fc.Arbitrary<Cubic> = fc
  .tuple(anyPoint, anyPoint, anyPoint, anyPoint)
  .filter(([p, a, b, q]) => distance(p, a) > 1 && distance(a, b) > 1 && distance(b, q) > 1)
  .map(([p, a, b, q]) => cubic(p, a, b, q));

export const anyCurve: fc.Arbitrary<Curve> = fc.oneof(anyLine, anyArc, anyCubic);

/** A line, arc or cubic between two points that bows by at most about a quarter of the way. */
const bowed = (p: Point, q: Point, kind: number, a: number, b: number): Curve => {
  if (kind === 0) return line(p, q);
  const along = subtract(q, p);
  if (kind === 1) {
    const sweep = a < 0 ? a - 0.1 : a + 0.1;
    const middle = scale(add(p, q), 0.5);
    const centre = add(middle, scale(left(along), 1 / (2 * Math.tan(sweep / 2))));
    return { kind: 'arc', from: p, to: q, centre, sweep };
  }
  const control = (share: number, bow: number) =>
    add(add(p, scale(along, share)), scale(left(along), bow / 3));
  return cubic(p, control(1 / 3, a), control(2 / 3, b), q);
};

/** Edges around the origin, counter-clockwise, 3 to 9 of them, 50 to 120 mm out, corners bent out and in. */
export const anyEdges: fc.Arbitrary<Path[]> = fc
  .array(
    fc.record({
      turn: between(0, 0.7),
      reach: between(50, 120),
      kind: fc.integer({ min: 0, max: 2 }),
      a: between(-0.8, 0.8),
      b: between(-0.8, 0.8),
    }),
    { minLength: 3, maxLength: 9 },
  )
  .map((corners) => {
    const points = corners.map(({ turn, reach }, i) => {
      const angle = (2 * Math.PI * (i + turn)) / corners.length;
      return point(reach * Math.cos(angle), reach * Math.sin(angle));
    });
    return corners.map(({ kind, a, b }, i) => [
      bowed(points[i]!, points[(i + 1) % points.length]!, kind, a, b),
    ]);
  });
