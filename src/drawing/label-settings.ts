import type { TextMark } from './drawing.ts';
import type { LabelWords } from './label-words.ts';
import { LEADING, SMALLEST_TEXT, textStyles } from './roles.ts';
import { blockSize } from './text-block.ts';
import { textWidth } from './text-width.ts';
import { wrapped, wrappedInto } from './wrap.ts';

/** One way to set a label: its blocks of text from top to bottom. */
export type Setting = readonly Pick<TextMark, 'role' | 'lines' | 'size'>[];

/** Titles are set this much larger than the lines below them. */
const TITLE = textStyles.title.size / textStyles.label.size;
/** A phrase up to so many ems is kept on one line where that can be. */
const LONG = 20;
const SIZES = [textStyles.label.size, (textStyles.label.size + SMALLEST_TEXT) / 2, SMALLEST_TEXT];

/** The title above and the phrases below: from the most comfortable way to the tightest, each made when asked for. */
export function* stacked({ title, phrases }: LabelWords): Generator<Setting> {
  const counts = [6, 5, 4, 3, 2, 1].filter((n) => n < phrases.length);
  const head = (size: number) => ({ role: 'title', lines: [title], size: size * TITLE }) as const;
  // Each phrase on a line of its own, or on as many as a long one takes.
  const natural = phrases.flatMap((phrase) => wrapped([phrase], widestOf(phrases)));
  const bodies = new Map<number, readonly string[]>([[phrases.length, natural]]);
  for (const size of SIZES) {
    if (phrases.length === 0) yield [head(size)];
    for (const n of phrases.length === 0 ? [] : [phrases.length, ...counts]) {
      const lines = bodies.get(n) ?? wrappedInto(phrases, n, widestOf(phrases));
      bodies.set(n, lines);
      yield [head(size), { role: 'label', lines, size }];
    }
  }
  // A narrow piece may break its phrases.
  for (const n of counts) {
    const lines = wrappedInto(phrases, n, 0);
    yield [head(SMALLEST_TEXT), { role: 'label', lines, size: SMALLEST_TEXT }];
  }
}

/** All in one run of a few long lines: a strap has no height for a title of its own. */
export function* inOneRun({ title, phrases }: LabelWords): Generator<Setting> {
  const all = [title, ...phrases];
  for (const n of [4, 3, 2, 1]) {
    yield [{ role: 'label', lines: wrappedInto(all, n, widestOf(all)), size: SMALLEST_TEXT }];
  }
}

/** The width of the widest phrase that is not so long that it may be broken. */
const widestOf = (texts: readonly string[]): number =>
  Math.max(0, ...texts.map((t) => Math.min(textWidth(t), LONG)));

/** Space between one block and the next, mm. */
export const gapAbove = (size: number): number => size * (LEADING - 1);

/** The rectangle that a setting fills, mm. */
export const settingSize = (setting: Setting): { readonly width: number; readonly height: number } => {
  const sizes = setting.map(blockSize);
  const gaps = setting.slice(1).reduce((sum, s) => sum + gapAbove(s.size), 0);
  return {
    width: Math.max(...sizes.map((s) => s.width)),
    height: sizes.reduce((sum, s) => sum + s.height, gaps),
  };
};
