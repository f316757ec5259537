import { boxOf } from '../geometry/box.ts';
import { distance, type Point, point } from '../geometry/point.ts';
import type { Segment } from './segment.ts';

/** Where something may stand: inside closed walls, which reach from min to max, and clear of obstacles. */
export interface Room {
  /** Four numbers for each straight stretch, x1 y1 x2 y2: the walls, then the obstacles. */
  readonly lines: Float64Array;
  readonly wallCount: number;
  readonly min: Point;
  readonly max: Point;
}

export interface Block {
  readonly width: number;
  readonly height: number;
}

export const roomOf = (walls: readonly Segment[], obstacles: readonly Segment[]): Room => {
  const lines = new Float64Array(4 * (walls.length + obstacles.length));
  let at = 0;
  const put = ({ x1, y1, x2, y2 }: Segment): void => {
    lines[at++] = x1;
    lines[at++] = y1;
    lines[at++] = x2;
    lines[at++] = y2;
  };
  walls.forEach(put);
  obstacles.forEach(put);
  return { lines, wallCount: walls.length, ...boxOf(walls.map(({ x1, y1 }) => point(x1, y1))) };
};

/** The room as one sees it whose head is tilted a quarter to the left: what ran up runs to the right. */
export const quarterTurned = ({ lines, wallCount, min, max }: Room): Room => {
  const turned = new Float64Array(lines.length);
  for (let i = 0; i < lines.length; i += 2) {
    turned[i] = lines[i + 1]!;
    turned[i + 1] = -lines[i]!;
  }
  return { lines: turned, wallCount, min: point(min.y, -max.x), max: point(max.y, -min.x) };
};

/** Levels tried between the lowest and the highest that the block could stand at. */
const LEVELS = 14;

/** Of two places as near as this to each other's distance (mm) no rounding decides, or a block would leap about while a piece moves. */
const AS_NEAR = 1e-6;

/**
 * The centre of an upright block that stands inside the room, as near as may be to the point where it is wanted;
 * null where none was found. Exact sideways; up and down it tries the wanted level and even steps, so that the
 * block glides rather than jumps while the walls move. Of two that are as near, the upper and then the left one is taken.
 */
export const findRoom = (room: Room, block: Block, wanted: Point): Point | null => {
  const [from, to] = [room.min.y + block.height / 2, room.max.y - block.height / 2];
  // Is the block taller or wider than the room?
  if (!(from <= to && block.width <= room.max.x - room.min.x)) return null;
  const tried = [Math.min(Math.max(wanted.y, from), to)];
  for (let i = 0; i <= LEVELS; i++) tried.push(from + ((to - from) * i) / LEVELS);
  tried.sort((a, b) => {
    const nearer = Math.abs(a - wanted.y) - Math.abs(b - wanted.y);
    return Math.abs(nearer) < AS_NEAR ? b - a : nearer;
  });
  let best: Point | null = null;
  for (const y of tried) {
    if (best && Math.abs(y - wanted.y) >= distance(best, wanted) - AS_NEAR) break;
    const x = placeOnLevel(room, block, y, wanted.x);
    if (x === null) continue;
    const found = point(x, y);
    if (!best || distance(found, wanted) < distance(best, wanted) - AS_NEAR) best = found;
  }
  return best;
};

/** The x nearest the wanted one at which the block, centred at a level, touches nothing. */
const placeOnLevel = (room: Room, { width, height }: Block, y: number, wanted: number): number | null => {
  const taken = takenBetween(room.lines, y - height / 2, y + height / 2);
  let best: number | null = null;
  let reach = taken[0] ?? 0;
  for (let i = 0; i < taken.length; i += 2) {
    const from = taken[i]!;
    if (from - reach >= width && isInside(room, (reach + from) / 2, y)) {
      const x = Math.min(Math.max(wanted, reach + width / 2), from - width / 2);
      if (best === null || Math.abs(x - wanted) < Math.abs(best - wanted) - AS_NEAR) best = x;
    }
    reach = Math.max(reach, taken[i + 1]!);
  }
  return best;
};

/** Stretches of x that lines take up between two levels, from and to by turns, ordered by where they begin. */
const takenBetween = (lines: Float64Array, low: number, high: number): number[] => {
  const taken: number[] = [];
  for (let i = 0; i < lines.length; i += 4) {
    const y1 = lines[i + 1]!;
    const y2 = lines[i + 3]!;
    if ((y1 < low && y2 < low) || (y1 > high && y2 > high)) continue;
    const a = xAtLevel(lines[i]!, y1, lines[i + 2]!, y2, low, high);
    const b = xAtLevel(lines[i + 2]!, y2, lines[i]!, y1, low, high);
    const from = Math.min(a, b);
    // A few at most are out of order: each moves down to its place.
    let at = taken.length;
    taken.push(0, 0);
    for (; at > 0 && taken[at - 2]! > from; at -= 2) {
      taken[at] = taken[at - 2]!;
      taken[at + 1] = taken[at - 1]!;
    }
    taken[at] = from;
    taken[at + 1] = Math.max(a, b);
  }
  return taken;
};

/** The x at which a stretch, walked from its first end, comes between two levels. */
const xAtLevel = (x1: number, y1: number, x2: number, y2: number, low: number, high: number): number => {
  if (y1 >= low && y1 <= high) return x1;
  const y = y1 < low ? low : high;
  return x1 + ((y - y1) / (y2 - y1)) * (x2 - x1);
};

/** Whether a point lies inside the walls: an odd number of them cross the level line to its left. */
const isInside = ({ lines, wallCount }: Room, x: number, y: number): boolean => {
  let inside = false;
  for (let i = 0; i < 4 * wallCount; i += 4) {
    const y1 = lines[i + 1]!;
    const y2 = lines[i + 3]!;
    if (y1 > y === y2 > y) continue;
    if (lines[i]! + ((y - y1) / (y2 - y1)) * (lines[i + 2]! - lines[i]!) < x) inside = !inside;
  }
  return inside;
};
