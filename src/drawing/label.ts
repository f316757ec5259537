import { add, between, distance, type Point, scale, subtract } from '../geometry/point.ts';
import { SAME_POINT } from '../geometry/tolerance.ts';
import type { Mark, TextMark } from './drawing.ts';
import type { LabelWords } from './label-words.ts';
import { grainMarks } from './marks/grain.ts';
import { obstaclesOf } from './obstacles.ts';
import { once } from './once.ts';
import { SMALLEST_TEXT } from './roles.ts';
import { findRoom, type Room, roomOf } from './room.ts';
import type { Segment } from './segment.ts';
import { setLabel } from './set-label.ts';

/** A label to be placed, and what there is around it. */
export interface LabelSite extends LabelWords {
  readonly wanted: Point;
  readonly grain: readonly [Point, Point];
  /** The stitch line, and the cut line outside it. */
  readonly walls: readonly Segment[];
  readonly silhouette: readonly Segment[];
  /** What the label must not lie on, and what it had better not. */
  readonly clear: readonly Mark[];
  /** Rows of stitches: the words keep clear of them, the grainline need not. */
  readonly rows: readonly Segment[];
  readonly rather: readonly Mark[];
}

export interface PlacedLabel {
  readonly label: readonly TextMark[];
  readonly grain: readonly [Point, Point];
  /** The names of marks had to make room. */
  readonly nameless: boolean;
}

/**
 * The label beside the grainline, which stays where it was meant unless a mark is there, within the stitch line: first with the
 * notes, clear of everything or over centre lines and dimensions; then without the notes. Null where it fits nowhere.
 */
export const meantLabel = (site: LabelSite): PlacedLabel | null => {
  const { wanted, walls } = site;
  const there = obstaclesOf(site.clear);
  const grain = movedGrain(site, walls, there) ?? site.grain;
  const clear = [...there, ...obstaclesOf(grainMarks(grain)), ...site.rows];
  const inside = [
    once(() => roomOf(walls, [...clear, ...obstaclesOf(site.rather)])),
    once(() => roomOf(walls, clear)),
  ] as const;
  const label = roomyLabel(site, inside, wanted);
  return label && { label, grain, nameless: false };
};

/**
 * A label with its notes if they have room, else without; first in the roomier wish of two, then over what it had better
 * not lie on, at last squeezed in there. Null where it fits nowhere.
 */
export const roomyLabel = (
  words: LabelWords,
  rooms: readonly [() => Room, () => Room],
  wanted: Point,
): TextMark[] | null => {
  const noted = { ...words, phrases: [...words.phrases, ...words.notes] };
  return (
    (words.notes.length > 0 ? setLabel(noted, rooms, wanted) : null) ??
    setLabel(words, rooms, wanted) ??
    setLabel(words, [rooms[1]], wanted, true)
  );
};

/**
 * The label first, wherever in the piece it fits, and the grainline, shortened if need be, in the room that is left; in
 * the smallest pieces at the cost of the names of marks. Where even that fails the piece's name stands alone.
 */
export const squeezedLabel = (site: LabelSite): PlacedLabel => {
  for (const nameless of [false, true]) {
    const clear = obstaclesOf(site.clear.filter((mark) => mark.kind === 'line' || !nameless));
    const rooms = [once(() => roomOf(site.walls, clear)), once(() => roomOf(site.silhouette, clear))];
    const label = setLabel(site, rooms, site.wanted, true);
    const grain = label && movedGrain(site, site.silhouette, [...clear, ...obstaclesOf(label)], GRAIN_ENDS);
    if (label && grain) return { label, grain, nameless };
  }
  return { label: [nameAlone(site)], grain: site.grain, nameless: true };
};

/** Lengths that a grainline is shortened to, the width that it needs, and what is kept free at its two ends together beside a label that was there first, mm. */
const GRAINS = [60, 40, 30, 20, 12];
const GRAIN_WIDTH = 5;
const GRAIN_ENDS = 1;

/**
 * A level or upright grainline as near to its place as it lies on nothing, shortened if need be; null where there is no
 * room for it, and where it runs aslant.
 */
const movedGrain = (
  { grain: [from, to] }: LabelSite,
  walls: readonly Segment[],
  obstacles: readonly Segment[],
  ends = 0,
): readonly [Point, Point] | null => {
  const [whole, along] = [distance(from, to), subtract(to, from)];
  const upright = Math.abs(along.x) <= SAME_POINT;
  if (!(upright || Math.abs(along.y) <= SAME_POINT)) return null;
  const room = roomOf(walls, obstacles);
  const middle = between(from, to, 0.5);
  for (const length of [whole, ...GRAINS.filter((l) => l < whole)]) {
    const long = length + ends;
    const block = upright ? { width: GRAIN_WIDTH, height: long } : { width: long, height: GRAIN_WIDTH };
    const at = findRoom(room, block, middle);
    const half = scale(along, length / whole / 2);
    if (at) return [subtract(at, half), add(at, half)];
  }
  return null;
};

const nameAlone = ({ title, wanted }: LabelSite): TextMark => ({
  kind: 'text',
  role: 'label',
  lines: [title],
  size: SMALLEST_TEXT,
  at: wanted,
  align: 'middle',
  angle: 0,
});
