import type { Floor } from './floor.ts';
import type { Layout } from './layout.ts';
import { areaOfRing, ringOf } from './ring.ts';
import type { Placement } from './task.ts';

/** What lies on the floor, in the frames of pieces and containers. */
export const layoutOf = (f: Floor): Layout => {
  const { task, parts, stances, bases, rooms } = f.plan;
  const at = new Map(parts.map(({ id }, i) => [id, i]));
  const pins = new Map(task.pinned.map((pin) => [pin.piece, pin]));
  const placements: Placement[] = [];
  const unplaced: string[] = [];
  for (const { id } of task.pieces) {
    const pin = pins.get(id);
    const i = at.get(id) ?? -1;
    if (pin !== undefined) placements.push(pin);
    else if (!(f.room[i]! >= 0)) unplaced.push(id);
    else {
      const { base, rotation, cosine, sine } = stances[f.stance[i]!]!;
      const { x: cx, y: cy } = bases[base]!;
      const { container, shift } = rooms[f.room[i]!]!;
      const x = f.x[i]! - (cx * cosine - cy * sine) - shift;
      const y = f.y[i]! - (cx * sine + cy * cosine);
      placements.push({ piece: id, container, rotation, x, y });
    }
  }
  return { placements, unplaced, ...measures(f, placements) };
};

const measures = (f: Floor, placements: readonly Placement[]): Pick<Layout, 'length' | 'density'> => {
  const { task, rooms } = f.plan;
  const areas = areaByPiece(f);
  const laid = placements.reduce((sum, { piece }) => sum + areas.get(piece)!, 0);
  if (task.ground.kind === 'strip') {
    const length = usedLength(f);
    return { length, density: length > 0 ? laid / (length * task.ground.width) : 0 };
  }
  const used = new Set(placements.map(({ container }) => container));
  const room = [...used].reduce(
    (sum, container) => sum + (rooms.find((one) => one.container === container)?.area ?? 0),
    0,
  );
  return { length: null, density: room > 0 ? laid / room : 0 };
};

/** How far the pieces reach along the strip, pinned ones too, mm. */
export const usedLength = (f: Floor): number => {
  const half = f.plan.task.spacing / 2;
  let end = 0;
  for (let i = 0; i < f.total; i++) {
    if (f.room[i]! < 0) continue;
    end = Math.max(end, f.x[i]! + f.plan.stances[f.stance[i]!]!.span.x1 - half);
  }
  return end;
};

const areaByPiece = (f: Floor): ReadonlyMap<string, number> =>
  new Map(f.plan.task.pieces.map(({ id, polygon }) => [id, Math.abs(areaOfRing(ringOf(polygon)))]));
