import { type Point, rotate } from '../geometry/point.ts';
import type { TextMark } from './drawing.ts';
import type { LabelWords } from './label-words.ts';
import { LEADING, SMALLEST_TEXT, textStyles } from './roles.ts';
import { findRoom, type Room, turnedRoom } from './room.ts';
import { blockSize } from './text-block.ts';
import { textWidth } from './text-width.ts';
import { wrappedInto } from './wrap.ts';

/** Kept free around a label, mm. */
const CLEAR = 1.3;
/** Titles are set this much larger than the lines below them. */
const TITLE = textStyles.title.size / textStyles.label.size;
/** A phrase up to so many ems is kept on one line where that can be. */
const LONG = 20;
const SIZES = [textStyles.label.size, (textStyles.label.size + SMALLEST_TEXT) / 2, SMALLEST_TEXT];

/** One way to set a label: its blocks of text from top to bottom. */
type Setting = readonly Pick<TextMark, 'role' | 'lines' | 'size'>[];

/**
 * Sets a label inside a piece, as near as may be to where it is wanted: large and in short lines where there is room,
 * else smaller, in fewer and longer lines, or turned a quarter; never under 8 point. The rooms are tried in turn:
 * the roomiest wish first, what must at least be kept clear of last. `tight` tries the one-run settings before the
 * comfortable ones. Null where nothing fits.
 */
export const setLabel = (
  words: LabelWords,
  rooms: readonly Room[],
  wanted: Point,
  tight = false,
): TextMark[] | null => {
  const [comfortable, runs] = [stacked(words), inOneRun(words)];
  const settings = tight ? [...runs, ...comfortable] : [...comfortable, ...runs];
  for (const room of rooms) {
    const upright = { angle: 0, room, wanted };
    const turned = {
      angle: Math.PI / 2,
      room: turnedRoom(room, -Math.PI / 2),
      wanted: rotate(wanted, -Math.PI / 2),
    };
    for (const setting of settings) {
      for (const way of [upright, turned]) {
        const size = sizeOf(setting);
        const block = { width: size.width + 2 * CLEAR, height: size.height + 2 * CLEAR };
        const centre = findRoom(way.room, block, way.wanted);
        if (centre) return placed(setting, centre, way.angle);
      }
    }
  }
  return null;
};

/** The title above, the phrases below: from the most comfortable way to the tightest. */
const stacked = ({ title, phrases }: LabelWords): Setting[] => {
  const settings: Setting[] = [];
  const counts = [6, 5, 4, 3, 2, 1].filter((n) => n < phrases.length);
  const bodies = counts.map((n) => wrappedInto(phrases, n, widestOf(phrases)));
  for (const size of SIZES) {
    const head = { role: 'title', lines: [title], size: size * TITLE } as const;
    if (phrases.length === 0) settings.push([head]);
    for (const lines of [phrases, ...bodies]) settings.push([head, { role: 'label', lines, size }]);
  }
  // A narrow piece may break its phrases.
  const small = { role: 'title', lines: [title], size: SMALLEST_TEXT * TITLE } as const;
  for (const n of counts) {
    settings.push([small, { role: 'label', lines: wrappedInto(phrases, n, 0), size: SMALLEST_TEXT }]);
  }
  return settings;
};

/** Title and phrases in one run of a few long lines: a strap has no height for a title of its own. */
const inOneRun = ({ title, phrases }: LabelWords): Setting[] => {
  const all = [title, ...phrases];
  return [4, 3, 2, 1].map((n) => [
    { role: 'label', lines: wrappedInto(all, n, widestOf(all)), size: SMALLEST_TEXT },
  ]);
};

/** The width of the widest phrase that is not so long that it may be broken. */
const widestOf = (texts: readonly string[]): number =>
  Math.max(0, ...texts.map((t) => Math.min(textWidth(t), LONG)));

const gapBelow = (size: number): number => size * (LEADING - 1);

const sizeOf = (setting: Setting): { width: number; height: number } => {
  const sizes = setting.map(blockSize);
  const gaps = setting.slice(1).reduce((sum, s) => sum + gapBelow(s.size), 0);
  return {
    width: Math.max(...sizes.map((s) => s.width)),
    height: sizes.reduce((sum, s) => sum + s.height, gaps),
  };
};

/** The setting's blocks as marks, flush left, the whole centred on a point of the turned frame. */
const placed = (setting: Setting, centre: Point, angle: number): TextMark[] => {
  const { width, height } = sizeOf(setting);
  let top = centre.y + height / 2;
  return setting.map((block, i) => {
    if (i > 0) top -= gapBelow(block.size);
    const tall = blockSize(block).height;
    const at = rotate({ x: centre.x - width / 2, y: top - tall / 2 }, angle);
    top -= tall;
    return { kind: 'text', ...block, at, align: 'start', angle };
  });
};
