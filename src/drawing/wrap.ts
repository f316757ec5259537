import { lettersOf } from './letters.ts';
import { textWidth } from './text-width.ts';

const BETWEEN = ' · ';
const JOINT = textWidth(BETWEEN);
const SPACE = textWidth(' ');

/** Where a phrase may be broken: not between a figure and its unit or its fraction. */
const BREAK = / (?!(?:cm|in)\b|\d+\/)/;

/** No line is so narrow (ems) that a word up to this is broken: longer than any in the trade, shorter than names can be. */
const LONGEST_WORD = 8;

/** A phrase with its width and that of each of its words, ems. */
interface Measured {
  readonly text: string;
  readonly width: number;
  readonly words: readonly { readonly text: string; readonly width: number }[];
}

const measured = (text: string): Measured => ({
  text,
  width: textWidth(text),
  words: text.split(BREAK).map((word) => ({ text: word, width: textWidth(word) })),
});

/** Phrases run together on lines of at most a width (ems), broken inside a phrase only where it alone is wider, and inside a word only where that is. */
export const wrapped = (phrases: readonly string[], width: number): string[] =>
  run(phrases.map(measured), width);

const run = (phrases: readonly Measured[], width: number): string[] => {
  const lines: string[] = [];
  let line = '';
  let long = 0;
  const end = (): void => {
    if (line !== '') lines.push(line);
    [line, long] = ['', 0];
  };
  const put = (part: { text: string; width: number }, joint: string, joined: number): void => {
    if (line !== '' && long + joined + part.width > width) end();
    long += (line === '' ? 0 : joined) + part.width;
    line += (line === '' ? '' : joint) + part.text;
  };
  for (const phrase of phrases) {
    if (phrase.width <= width) put(phrase, BETWEEN, JOINT);
    else {
      // A phrase that must be broken begins on a line of its own.
      end();
      for (const word of phrase.words) {
        if (word.width <= Math.max(width, LONGEST_WORD)) put(word, ' ', SPACE);
        else
          for (const [i, text] of lettersOf(word.text).entries())
            put({ text, width: textWidth(text) }, i === 0 ? ' ' : '', i === 0 ? SPACE : 0);
      }
    }
  }
  end();
  return lines;
};

/**
 * The narrowest lines into which the phrases can be run together in at most so many lines, but no narrower than a width
 * (ems): phrases are broken only where they are longer than both.
 */
export const wrappedInto = (phrases: readonly string[], count: number, least: number): string[] => {
  const all = phrases.map(measured);
  const total = all.reduce((sum, p) => sum + p.width, JOINT * Math.max(0, all.length - 1));
  // A thousandth over, lest the last letter of one line be lost to rounding.
  let [low, high] = [Math.min(Math.max(least, total / count / 1.05), total), total * 1.001];
  const narrowest = run(all, low);
  if (narrowest.length <= count) return narrowest;
  // A handful of halvings finds the width to a letter or so, which is all the eye asks for.
  for (let i = 0; i < 7; i++) {
    const middle = (low + high) / 2;
    if (run(all, middle).length <= count) high = middle;
    else low = middle;
  }
  return run(all, high);
};
