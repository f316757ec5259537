import { type Point, point, rotate } from '../geometry/point.ts';
import type { TextMark } from './drawing.ts';
import { gapAbove, inOneRun, type Setting, settingSize, stacked } from './label-settings.ts';
import type { LabelWords } from './label-words.ts';
import { once } from './once.ts';
import { findRoom, quarterTurned, type Room } from './room.ts';
import { blockSize } from './text-block.ts';

/** Kept free around a label, and around one that is squeezed in, mm. */
const CLEAR = 1.3;
const BARELY_CLEAR = 0.7;
const QUARTER = Math.PI / 2;

/**
 * Sets a label inside a piece, as near as may be to where it is wanted: large and in short lines where there is room,
 * else smaller, in fewer and longer lines, or turned a quarter; never under 8 point. For each way of setting it the rooms
 * are tried in turn: the roomiest wish first, what must at least be kept clear of last. `tight` tries one run of long
 * lines before a title with lines below it, and stands nearer to its neighbours. Null where nothing fits.
 */
export const setLabel = (
  words: LabelWords,
  rooms: readonly (() => Room)[],
  wanted: Point,
  tight = false,
): TextMark[] | null => {
  const ways = tight ? [inOneRun, stacked] : [stacked, inOneRun];
  const turned = rooms.map((room) => once(() => quarterTurned(room())));
  for (const way of ways) {
    for (const [i, room] of rooms.entries()) {
      const found = firstThatFits(way(words), [room, turned[i]!], wanted, tight ? BARELY_CLEAR : CLEAR);
      if (found) return found;
    }
  }
  return null;
};

const firstThatFits = (
  settings: Iterable<Setting>,
  [room, turned]: readonly [() => Room, () => Room],
  wanted: Point,
  clear: number,
): TextMark[] | null => {
  for (const setting of settings) {
    const { width, height } = settingSize(setting);
    const block = { width: width + 2 * clear, height: height + 2 * clear };
    const upright = findRoom(room(), block, wanted);
    if (upright) return placed(setting, upright, 0);
    const aside = findRoom(turned(), block, rotate(wanted, -QUARTER));
    if (aside) return placed(setting, aside, QUARTER);
  }
  return null;
};

/** The setting's blocks as marks, flush left, the whole centred on a point of the turned frame. */
const placed = (setting: Setting, centre: Point, angle: number): TextMark[] => {
  const { width, height } = settingSize(setting);
  let top = centre.y + height / 2;
  return setting.map((block, i) => {
    if (i > 0) top -= gapAbove(block.size);
    const tall = blockSize(block).height;
    const at = rotate(point(centre.x - width / 2, top - tall / 2), angle);
    top -= tall;
    return { kind: 'text', ...block, at, align: 'start', angle };
  });
};
