import { distance, type Point, point, rotate } from '../geometry/point.ts';
import { isInside, type Segment } from './polygon.ts';

/** Where something may stand: inside closed walls, clear of obstacles. */
export interface Room {
  readonly walls: readonly Segment[];
  readonly obstacles: readonly Segment[];
}

export interface Block {
  readonly width: number;
  readonly height: number;
}

/** Levels tried between the lowest and the highest that the block could stand at. */
const LEVELS = 14;

/**
 * The centre of an upright block that stands inside the room, as near as may be to the point where it is wanted;
 * null where none was found. Exact sideways; up and down it tries the wanted level and even steps, so that the
 * block glides rather than jumps while the walls move.
 */
export const findRoom = (room: Room, block: Block, wanted: Point): Point | null => {
  const [low, high] = levels(room.walls);
  const [from, to] = [low + block.height / 2, high - block.height / 2];
  // Is the block taller than the room?
  if (!(from <= to)) return null;
  const tried = [Math.min(Math.max(wanted.y, from), to)];
  for (let i = 0; i <= LEVELS; i++) tried.push(from + ((to - from) * i) / LEVELS);
  tried.sort((a, b) => Math.abs(a - wanted.y) - Math.abs(b - wanted.y));
  let best: Point | null = null;
  for (const y of tried) {
    if (best && Math.abs(y - wanted.y) >= distance(best, wanted)) break;
    const x = placeOnLevel(room, block, y, wanted.x);
    if (x === null) continue;
    const found = point(x, y);
    if (!best || distance(found, wanted) < distance(best, wanted)) best = found;
  }
  return best;
};

/** The same room turned about the origin, radians. */
export const turnedRoom = ({ walls, obstacles }: Room, angle: number): Room => ({
  walls: walls.map((s) => turned(s, angle)),
  obstacles: obstacles.map((s) => turned(s, angle)),
});

const turned = ({ x1, y1, x2, y2 }: Segment, angle: number): Segment => {
  const [a, b] = [rotate(point(x1, y1), angle), rotate(point(x2, y2), angle)];
  return { x1: a.x, y1: a.y, x2: b.x, y2: b.y };
};

const levels = (walls: readonly Segment[]): [number, number] => {
  let [low, high] = [Infinity, -Infinity];
  for (const { y1, y2 } of walls) {
    low = Math.min(low, y1, y2);
    high = Math.max(high, y1, y2);
  }
  return [low, high];
};

/** The x nearest the wanted one at which the block, centred at a level, touches nothing. */
const placeOnLevel = (room: Room, { width, height }: Block, y: number, wanted: number): number | null => {
  const taken = takenBetween(room, y - height / 2, y + height / 2);
  let best: number | null = null;
  let reach = taken[0]?.[1] ?? 0;
  for (const [from, to] of taken) {
    if (from - reach >= width && isInside(room.walls, point((reach + from) / 2, y))) {
      const x = Math.min(Math.max(wanted, reach + width / 2), from - width / 2);
      if (best === null || Math.abs(x - wanted) < Math.abs(best - wanted)) best = x;
    }
    reach = Math.max(reach, to);
  }
  return best;
};

/** Stretches of x that walls and obstacles take up between two levels, by where they begin. */
const takenBetween = ({ walls, obstacles }: Room, low: number, high: number): [number, number][] => {
  const taken: [number, number][] = [];
  for (const list of [walls, obstacles]) {
    for (const { x1, y1, x2, y2 } of list) {
      if (Math.max(y1, y2) < low || Math.min(y1, y2) > high) continue;
      const a = xAtLevel(x1, y1, x2, y2, low, high);
      const b = xAtLevel(x2, y2, x1, y1, low, high);
      taken.push(a < b ? [a, b] : [b, a]);
    }
  }
  return taken.sort((a, b) => a[0] - b[0]);
};

/** The x at which a segment, walked from its first end, comes between two levels. */
const xAtLevel = (x1: number, y1: number, x2: number, y2: number, low: number, high: number): number => {
  const y = Math.min(Math.max(y1, low), high);
  return y === y1 ? x1 : x1 + ((y - y1) / (y2 - y1)) * (x2 - x1);
};
