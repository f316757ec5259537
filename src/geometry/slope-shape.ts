import { fitPath } from './fit.ts';
import { reversed } from './measure.ts';
import { line, type Path, pathEnd, pathStart } from './path.ts';
import { direction, distance, type Point, point, subtract } from './point.ts';
import { distance3 } from './space.ts';
import { type Strip, unroll } from './strip.ts';
import { rotated, translated } from './transform.ts';
import { wholeEdge } from './whole-edge.ts';

/** The four edges of a strip rolled flat, counter-clockwise, upright about x = 0. */
export interface SlopeShape {
  readonly bottom: Path;
  readonly right: Path;
  readonly top: Path;
  readonly left: Path;
}

/** Both edges left to right, the first ruling upright on x = 0 with its foot on the origin. */
export interface UprightEdges {
  readonly top: Path;
  readonly bottom: Path;
}

/**
 * A strip of equal slope (left rail the upper edge, right rail the lower, going counter-clockwise seen from above), rolled
 * flat. Its rulings have one length and stand square to both edges, which gives the fit its end tangents.
 */
export const uprightSlope = (strip: Strip): UprightEdges => {
  const flat = unroll(strip);
  const height = distance3(strip.left[0]!, strip.right[0]!);
  const stand = (p: Point) => point(p.y, height - p.x);
  const start = point(1, 0);
  const last = subtract(stand(flat.left.at(-1)!), stand(flat.right.at(-1)!));
  const end = point(last.y / height, -last.x / height);
  return {
    top: fitPath(flat.left.map(stand), { start, end }),
    bottom: fitPath(flat.right.map(stand), { start, end }),
  };
};

/** A piece that is its own mirror image, from its right half: the middle of its lower edge on the origin. */
export const mirroredShape = ({ top, bottom }: UprightEdges): SlopeShape =>
  closed(wholeEdge(bottom), wholeEdge(top));

/** A piece with two ends of its own, standing on the chord of its lower edge. */
export const shapeOnChord = ({ top, bottom }: UprightEdges): SlopeShape => {
  const [from, to] = [pathStart(bottom), pathEnd(bottom)];
  const turn = -direction(subtract(to, from));
  const shift = point(-distance(from, to) / 2, 0);
  const stand = (path: Path) =>
    translated(rotated(translated(path, subtract(point(0, 0), from)), turn), shift);
  return closed(stand(bottom), stand(top));
};

const closed = (bottom: Path, topLeftToRight: Path): SlopeShape => {
  const top = reversed(topLeftToRight);
  return {
    bottom,
    right: [line(pathEnd(bottom), pathStart(top))],
    top,
    left: [line(pathEnd(top), pathStart(bottom))],
  };
};
