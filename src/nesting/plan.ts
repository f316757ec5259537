import { areaOfRing, boxOf, ringOf } from './ring.ts';
import { type Room, roomsOf } from './rooms.ts';
import { type Base, baseOf, noStances, type Stance, type Stances, stanceOf } from './stances.ts';
import type { Task } from './task.ts';

/** A piece to be laid and the stances it may be laid in. */
export interface Part {
  readonly id: string;
  readonly base: number;
  readonly stances: readonly number[];
  readonly area: number;
}

/** What stays where it is: a pinned piece, a flaw, what lies outside an area. */
export interface Fixed {
  readonly stance: number;
  readonly x: number;
  readonly y: number;
}

/** A task made ready: outlines that are the same kept once, the ground as rooms in one plane. */
export interface Plan {
  readonly task: Task;
  readonly bases: readonly Base[];
  readonly stances: readonly Stance[];
  /** The pieces that are not pinned. */
  readonly parts: readonly Part[];
  readonly fixed: readonly Fixed[];
  readonly rooms: readonly Room[];
}

/** Throws a RangeError where the task cannot be read: a ring of no area, a length that is none, an unknown pin. */
export const planOf = (task: Task): Plan => {
  refuse(task);
  const all = noStances();
  const half = task.spacing / 2;
  const margins = { half, edge: task.edgeSpacing };
  const baseOfPiece = new Map(
    task.pieces.map(({ id, polygon }) => [id, baseOf(all, ringOf(polygon), margins)]),
  );
  const pinned = new Set(task.pinned.map(({ piece }) => piece));
  const parts = task.pieces
    .filter(({ id }) => !pinned.has(id))
    .map(({ id, rotations }) => {
      const base = baseOfPiece.get(id)!;
      const stances = [...new Set(rotations.map((rotation) => stanceOf(all, base, rotation, half)))];
      return { id, base, stances, area: all.bases[base]!.area };
    });
  const sizes = all.bases.map(({ ring }) => {
    const { x0, y0, x1, y1 } = boxOf(ring);
    return Math.sqrt((x1 - x0) ** 2 + (y1 - y0) ** 2);
  });
  const rooms = roomsOf(task, Math.max(1, ...sizes));
  const fixed = [...pinnedIn(task, all, baseOfPiece, rooms), ...takenIn(all, rooms)];
  return { task, bases: all.bases, stances: all.stances, parts, fixed, rooms };
};

const refuse = ({ ground, pieces, spacing, edgeSpacing }: Task): void => {
  if (!(spacing >= 0 && edgeSpacing >= 0)) throw new RangeError('a spacing is 0 mm or more');
  if (ground.kind === 'strip' && !(ground.width > 0)) throw new RangeError('a strip has a width');
  if (ground.kind === 'strip' && !((ground.length ?? 1) > 0)) throw new RangeError('a strip has a length');
  const areas = pieces.map(({ polygon }) => Math.abs(areaOfRing(ringOf(polygon))));
  if (!areas.every((area) => area > 0)) throw new RangeError('a piece without an area');
  if (new Set(pieces.map(({ id }) => id)).size < pieces.length)
    throw new RangeError('two pieces of one name');
};

/** Pinned pieces, once in each room of their container. */
const pinnedIn = (
  { pinned, spacing }: Task,
  all: Stances,
  baseOfPiece: ReadonlyMap<string, number>,
  rooms: readonly Room[],
): readonly Fixed[] =>
  pinned.flatMap(({ piece, container, rotation, x, y }) => {
    const base = baseOfPiece.get(piece);
    if (base === undefined) throw new RangeError(`a pin without its piece: ${piece}`);
    const stance = stanceOf(all, base, rotation, spacing / 2);
    const { cosine, sine } = all.stances[stance]!;
    const { x: cx, y: cy } = all.bases[base]!;
    return rooms
      .filter((room) => room.container === container)
      .map(({ shift }) => ({
        stance,
        x: x + shift + cx * cosine - cy * sine,
        y: y + cx * sine + cy * cosine,
      }));
  });

const takenIn = (all: Stances, rooms: readonly Room[]): readonly Fixed[] =>
  rooms.flatMap(({ taken }) =>
    taken.map((ring) => {
      const base = baseOf(all, ring, null);
      const { x, y } = all.bases[base]!;
      return { stance: stanceOf(all, base, 0, 0), x, y };
    }),
  );
