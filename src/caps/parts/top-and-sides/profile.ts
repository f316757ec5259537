import { type Cubic, cubic } from '../../../geometry/path.ts';
import { type Point, point } from '../../../geometry/point.ts';

/** A bend that sets out level and arrives upright, or the other way; its handles as shares of the way to the corner. */
export const bend = (
  from: Point,
  sets: 'level' | 'upright',
  to: Point,
  first: number,
  last: number,
): Cubic => {
  const corner = sets === 'level' ? point(to.x, from.y) : point(from.x, to.y);
  const towards = (p: Point, share: number) =>
    point(p.x + (corner.x - p.x) * share, p.y + (corner.y - p.y) * share);
  return cubic(from, towards(from, first), towards(to, last), to);
};

/** Where an end stands out furthest over the edge: at a share of the height, and higher by a share of how far it stands out. */
const FULLEST = { height: 0.3, fullness: 0.3 };

/** The place where a profile of some height stands out furthest beyond the edge, + to the front, mm. */
export const fullest = (edge: Point, fullness: number, height: number): Point =>
  point(edge.x + fullness, FULLEST.height * height + FULLEST.fullness * Math.abs(fullness));

/** From where a profile stands out furthest, upright there, down and in to the edge. */
export const tuckedIn = (out: Point, edge: Point): Cubic =>
  cubic(out, point(out.x, out.y * 0.45), point((out.x + edge.x) / 2, out.y * 0.25), edge);
