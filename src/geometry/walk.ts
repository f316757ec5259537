import { isClosed, type Path, pathStart, radius } from './path.ts';
import { direction, type Point, subtract } from './point.ts';

export { arcToCubics } from './arc-to-cubics.ts';

/**
 * What can follow a path: a canvas, a page, a file. Millimetres, y up; angles in radians from the x axis,
 * + counter-clockwise.
 */
export interface Sink {
  moveTo(to: Point): void;
  lineTo(to: Point): void;
  arcTo(centre: Point, radius: number, startAngle: number, sweep: number, to: Point): void;
  cubicTo(c1: Point, c2: Point, to: Point): void;
  /** Joins the end to the start. Said once, at the end, and only of a closed path. */
  close(): void;
}

/** Speaks a path to a sink, verb by verb. An empty path says nothing. */
export const walk = (path: Path, sink: Sink): void => {
  if (path.length === 0) return;
  sink.moveTo(pathStart(path));
  for (const curve of path) {
    if (curve.kind === 'line') sink.lineTo(curve.to);
    else if (curve.kind === 'cubic') sink.cubicTo(curve.c1, curve.c2, curve.to);
    else {
      const start = direction(subtract(curve.from, curve.centre));
      sink.arcTo(curve.centre, radius(curve), start, curve.sweep, curve.to);
    }
  }
  if (isClosed(path)) sink.close();
};
