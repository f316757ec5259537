import { differenceD, FillRule } from 'clipper2-ts';
import { LAID_GRID } from '../geometry/tolerance.ts';
import { areaOfRing, boxOf, counterClockwise, moved, type Ring, ringOf } from './ring.ts';
import type { Area, Strip, Task } from './task.ts';
import { parallels } from './widened.ts';

/**
 * A box that outlines, with half the spacing round them, have to stay in. Rooms lie far apart in one plane; a place in
 * a room is a place in its container shifted by `shift` along x.
 */
export interface Room {
  readonly container: number;
  readonly shift: number;
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
  /** Where nothing may lie, in the plane: flaws, and what the box holds beyond the outline. */
  readonly taken: readonly Ring[];
  readonly area: number;
}

/** The rooms of a ground. `largest` is the size of the largest piece, mm. */
export const roomsOf = ({ ground, spacing, edgeSpacing }: Task, largest: number): readonly Room[] => {
  const inset = edgeSpacing - spacing / 2;
  if (ground.kind === 'strip') return [stripRoom(ground, spacing / 2, inset)];
  const rooms: Room[] = [];
  let start = 0;
  ground.areas.forEach((area, container) => {
    for (const part of partsOf(area, inset)) {
      const room = roomOf(area, part, container, { inset, start, apron: largest });
      rooms.push(room);
      start = room.x1 + 3 * largest;
    }
  });
  return rooms;
};

const stripRoom = ({ width, length }: Strip, half: number, inset: number): Room => ({
  container: 0,
  shift: 0,
  x0: -half,
  x1: (length ?? Infinity) + half,
  y0: inset,
  y1: width - inset,
  taken: [],
  area: (length ?? Infinity) * width,
});

/** What is left of an area at a distance from its outline: it may come apart. */
const partsOf = (area: Area, inset: number): readonly Ring[] => {
  const outline = counterClockwise(ringOf(area.outline));
  if (inset === 0) return [outline];
  return parallels(outline, -inset).filter((ring) => areaOfRing(ring) > 0);
};

interface Setting {
  readonly inset: number;
  readonly start: number;
  /** How far the ground beyond the outline is drawn, so that the shortest way out of it leads in. */
  readonly apron: number;
}

const roomOf = (area: Area, part: Ring, container: number, { inset, start, apron }: Setting): Room => {
  const own = boxOf(part);
  const shift = start + apron - own.x0;
  const outline = moved(part, 0, shift, 0);
  const flaws = area.flaws.map((flaw) => {
    const ring = counterClockwise(moved(ringOf(flaw), 0, shift, 0));
    return parallels(ring, inset).filter((one) => areaOfRing(one) > 0);
  });
  const box = boxOf(outline);
  return {
    container,
    shift,
    ...box,
    taken: [...flaws.flat(), ...beyond(outline, apron)],
    area: areaOfRing(counterClockwise(ringOf(area.outline))),
  };
};

/**
 * What lies about an outline within the apron: two rings, left and right of the middle, since one would have a hole.
 * None where the outline fills its box.
 */
const beyond = (outline: Ring, apron: number): readonly Ring[] => {
  const { x0, y0, x1, y1 } = boxOf(outline);
  if ((x1 - x0) * (y1 - y0) - areaOfRing(outline) < LAID_GRID * (x1 - x0 + y1 - y0)) return [];
  const middle = (x0 + x1) / 2;
  const halves = [
    [x0 - apron, middle],
    [middle, x1 + apron],
  ] as const;
  return halves.flatMap(([from, to]) => {
    const half = [
      { x: from, y: y0 - apron },
      { x: to, y: y0 - apron },
      { x: to, y: y1 + apron },
      { x: from, y: y1 + apron },
    ];
    const path: { x: number; y: number }[] = [];
    for (let i = 0; i < outline.length; i += 2) path.push({ x: outline[i]!, y: outline[i + 1]! });
    const rest = differenceD([half], [path], FillRule.NonZero, DIGITS);
    return rest
      .map((ring) => Float64Array.from(ring.flatMap(({ x, y }) => [x, y])))
      .filter((ring) => areaOfRing(ring) > 0);
  });
};

const DIGITS = Math.round(-Math.log10(LAID_GRID));
