import { textWidth } from './text-width.ts';

const BETWEEN = ' · ';

/** Phrases run together on lines of at most a width (ems), broken inside a phrase only where it alone is wider. */
export const wrapped = (phrases: readonly string[], width: number, bold = false): string[] => {
  const lines: string[] = [];
  let line = '';
  const put = (text: string, joint: string): void => {
    const joined = line === '' ? text : line + joint + text;
    if (line === '' || textWidth(joined, bold) <= width) line = joined;
    else {
      lines.push(line);
      line = text;
    }
  };
  for (const phrase of phrases) {
    if (textWidth(phrase, bold) <= width) put(phrase, BETWEEN);
    else {
      // A phrase that must be broken begins on a line of its own.
      if (line !== '') lines.push(line);
      line = '';
      for (const word of phrase.split(' ')) put(word, ' ');
    }
  }
  return line === '' ? lines : [...lines, line];
};

/**
 * The narrowest lines into which the phrases can be run together in at most so many lines, but no narrower than a width
 * (ems): phrases are broken only where they are longer than both.
 */
export const wrappedInto = (phrases: readonly string[], count: number, least: number): string[] => {
  const all = textWidth(phrases.join(BETWEEN));
  // A handful of halvings finds the width to a letter or so, which is all the eye asks for.
  let [low, high] = [Math.min(Math.max(least, all / count / 1.05), all), all];
  if (wrapped(phrases, low).length <= count) return wrapped(phrases, low);
  for (let i = 0; i < 7; i++) {
    const middle = (low + high) / 2;
    if (wrapped(phrases, middle).length <= count) high = middle;
    else low = middle;
  }
  return wrapped(phrases, high);
};
