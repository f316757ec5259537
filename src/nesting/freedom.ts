import { SAME_POINT } from '../geometry/tolerance.ts';
import type { Floor } from './floor.ts';

/** Where a stance may stand in a room: x from, to, y from, to, mm. Written by goesInto. */
export const free = new Float64Array(4);

/** Whether a stance goes into a room as it is now; how far it may move there is left in free. */
export const goesInto = (f: Floor, stance: number, room: number): boolean => {
  const { span } = f.plan.stances[stance]!;
  const box = f.plan.rooms[room]!;
  const right = f.roomEnd[room]! - span.x1;
  const high = box.y1 - span.y1;
  free[0] = box.x0 - span.x0;
  free[2] = box.y0 - span.y0;
  if (!(right >= free[0]! - SAME_POINT && high >= free[2]! - SAME_POINT)) return false;
  free[1] = Math.max(free[0]!, right);
  free[3] = Math.max(free[2]!, high);
  return true;
};

export const clamped = (value: number, from: number, to: number): number => {
  if (value < from) return from;
  return Math.min(value, to);
};
