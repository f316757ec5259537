import type { Box } from '../geometry/box.ts';
import { point } from '../geometry/point.ts';
import { LAID_OVERLAP } from '../geometry/tolerance.ts';
import { isDeepIn, type Region } from './region.ts';

/**
 * Whether two regions share more than a touch: a disc as wide as a touch lies in both. One that is shared along is
 * found where it is a few touches deep; the very same region twice overlaps. Each side of either is cut where it meets the
 * other's: what lies just behind the middle of such a stretch lies in the other as the whole stretch does, or does not.
 */
export const regionsOverlap = (a: Region, b: Region): boolean => {
  const box = common(a, b);
  return behind(a, b, box) || behind(b, a, box);
};

/** Where both may lie. */
const common = (a: Region, b: Region): Box => {
  const [{ min: p, max: q }, { min: r, max: s }] = [a.box, b.box];
  if (!a.within) return b.box;
  if (!b.within) return a.box;
  return {
    min: point(Math.max(p.x, r.x), Math.max(p.y, r.y)),
    max: point(Math.min(q.x, s.x), Math.min(q.y, s.y)),
  };
};

/** Whether some place just behind a side of one region lies in both. */
const behind = (one: Region, other: Region, box: Box): boolean => {
  const sides = sidesIn(one, box);
  const others = sidesIn(other, box);
  for (let k = 0; k < sides.length; k += 4) {
    const [x, y] = [sides[k]!, sides[k + 1]!];
    const [dx, dy] = [sides[k + 2]! - x, sides[k + 3]! - y];
    const step = ((one.within ? 1 : -1) * LAID_OVERLAP) / Math.sqrt(dx * dx + dy * dy);
    const cuts = cutsOf(x, y, dx, dy, others);
    for (let i = 1; i < cuts.length; i++) {
      const t = (cuts[i - 1]! + cuts[i]!) / 2;
      const place = point(x + t * dx - dy * step, y + t * dy + dx * step);
      if (isDeepIn(other, place, LAID_OVERLAP / 2) && isDeepIn(one, place, LAID_OVERLAP / 2)) return true;
    }
  }
  return false;
};

/** The sides that reach into a box: x and y of each start and end, mm. */
const sidesIn = ({ ring }: Region, { min, max }: Box): readonly number[] => {
  const sides: number[] = [];
  let from = ring[ring.length - 1]!;
  for (const to of ring) {
    const beside = (from.x < min.x && to.x < min.x) || (from.x > max.x && to.x > max.x);
    const beyond = (from.y < min.y && to.y < min.y) || (from.y > max.y && to.y > max.y);
    if (!beside && !beyond && (from.x !== to.x || from.y !== to.y)) sides.push(from.x, from.y, to.x, to.y);
    from = to;
  }
  return sides;
};

/** Parts of a side that goes by (dx, dy) from (x, y), from 0 to 1 in order, at which others cross it or begin on it. */
const cutsOf = (
  x: number,
  y: number,
  dx: number,
  dy: number,
  others: readonly number[],
): readonly number[] => {
  const cuts = [0, 1];
  const square = dx * dx + dy * dy;
  const touch = LAID_OVERLAP * Math.sqrt(square);
  for (let k = 0; k < others.length; k += 4) {
    const [ax, ay] = [others[k]! - x, others[k + 1]! - y];
    const [bx, by] = [others[k + 2]! - x, others[k + 3]! - y];
    // How far either end lies to the left of the side, times its length.
    const a = dx * ay - dy * ax;
    const b = dx * by - dy * bx;
    const near = Math.abs(a) <= touch;
    if (!near && a > 0 === b > 0) continue;
    const part = near ? 0 : a / (a - b);
    const t = ((ax + part * (bx - ax)) * dx + (ay + part * (by - ay)) * dy) / square;
    if (t > 0 && t < 1) cuts.push(t);
  }
  return cuts.length > 2 ? cuts.sort((a, b) => a - b) : cuts;
};
