import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import GeometryFactory from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import BufferOp from 'jsts/org/locationtech/jts/operation/buffer/BufferOp.js';
import DistanceOp from 'jsts/org/locationtech/jts/operation/distance/DistanceOp.js';
import OverlayOp from 'jsts/org/locationtech/jts/operation/overlay/OverlayOp.js';
import type { Point } from '../../src/geometry/point.ts';
import type { Placement } from '../../src/nesting/task.ts';

/** A set of points in the plane as the independent library for plane topology (jsts) keeps it. */
export interface Solid {
  getArea(): number;
  isEmpty(): boolean;
}

const factory = new GeometryFactory();

const ringOf = (points: readonly Point[]) =>
  factory.createLinearRing([...points, points[0]!].map(({ x, y }) => new Coordinate(x, y)));

export const solidOf = (outline: readonly Point[], holes: readonly (readonly Point[])[] = []): Solid =>
  factory.createPolygon(ringOf(outline), holes.map(ringOf));

export const common = (a: Solid, b: Solid): Solid => OverlayOp.intersection(a, b);
export const without = (a: Solid, b: Solid): Solid => OverlayOp.difference(a, b);

/** All within a distance, mm; less than the solid where negative. */
export const grown = (solid: Solid, by: number): Solid => BufferOp.bufferOp(solid, by);

/** Whether a disc of this width, mm, fits in nowhere. */
export const isThinner = (solid: Solid, width: number): boolean => grown(solid, -width / 2).isEmpty();

/** An outline where a placement puts it. */
export const placed = (
  outline: readonly Point[],
  { rotation, x, y }: Pick<Placement, 'rotation' | 'x' | 'y'>,
): readonly Point[] =>
  outline.map((p) => ({
    x: p.x * Math.cos(rotation) - p.y * Math.sin(rotation) + x,
    y: p.x * Math.sin(rotation) + p.y * Math.cos(rotation) + y,
  }));

/** The shortest way between two, mm; 0 where they meet. */
export const between = (a: Solid, b: Solid): number => DistanceOp.distance(a, b);
