import { differenceD, FillRule } from 'clipper2-ts';
import { LAID_GRID } from '../geometry/tolerance.ts';
import { areaOfRing, boxOf, counterClockwise, moved, type Ring, ringOf } from './ring.ts';
import type { Area, Strip, Task } from './task.ts';

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
  /** Of the container, mm². */
  readonly area: number;
}

/** The rooms of a ground, one for each container. `largest` is the size of the largest piece, mm. */
export const roomsOf = ({ ground, spacing, edgeSpacing }: Task, largest: number): readonly Room[] => {
  const half = spacing / 2;
  if (ground.kind === 'strip') return [stripRoom(ground, half, edgeSpacing)];
  let start = 0;
  return ground.areas.map((area, container) => {
    const outline = counterClockwise(ringOf(area.outline));
    const own = boxOf(outline);
    const shift = start + 2 * largest - own.x0;
    start = own.x1 + shift;
    const inset = edgeSpacing - half;
    return {
      container,
      shift,
      x0: own.x0 + shift + inset,
      x1: own.x1 + shift - inset,
      y0: own.y0 + inset,
      y1: own.y1 - inset,
      taken: [...flawsOf(area, shift), ...beyond(moved(outline, 0, shift, 0), largest)],
      area: areaOfRing(outline),
    };
  });
};

const stripRoom = ({ width, length }: Strip, half: number, edge: number): Room => ({
  container: 0,
  shift: 0,
  x0: -half,
  x1: (length ?? Infinity) + half,
  y0: edge - half,
  y1: width - edge + half,
  taken: [],
  area: (length ?? Infinity) * width,
});

const flawsOf = ({ flaws }: Area, shift: number): readonly Ring[] =>
  flaws
    .map((flaw) => counterClockwise(moved(ringOf(flaw), 0, shift, 0)))
    .filter((ring) => areaOfRing(ring) > 0);

/**
 * What lies about an outline, so far that the shortest way out of it leads in: two rings, left and right of the
 * middle, since one would have a hole. None where the outline fills its box.
 */
const beyond = (outline: Ring, apron: number): readonly Ring[] => {
  const { x0, y0, x1, y1 } = boxOf(outline);
  if ((x1 - x0) * (y1 - y0) - areaOfRing(outline) < LAID_GRID * (x1 - x0 + y1 - y0)) return [];
  const path: { x: number; y: number }[] = [];
  for (let i = 0; i < outline.length; i += 2) path.push({ x: outline[i]!, y: outline[i + 1]! });
  const middle = (x0 + x1) / 2;
  return [
    [x0 - apron, middle],
    [middle, x1 + apron],
  ].flatMap(([from, to]) => {
    const half = [
      { x: from!, y: y0 - apron },
      { x: to!, y: y0 - apron },
      { x: to!, y: y1 + apron },
      { x: from!, y: y1 + apron },
    ];
    return differenceD([half], [path], FillRule.NonZero, DIGITS)
      .map((ring) => Float64Array.from(ring.flatMap(({ x, y }) => [x, y])))
      .filter((ring) => areaOfRing(ring) > 0);
  });
};

const DIGITS = Math.round(-Math.log10(LAID_GRID));
