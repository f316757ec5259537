import { lettersOf } from '../drawing/letters.ts';
import { textWidth } from '../drawing/text-width.ts';

/** A last line shorter than this share of the width looks forgotten: the words are then shared out evenly. */
const FORGOTTEN = 0.3;

/** Words broken into lines of at most a width, in ems. A word that is wider is broken between its letters. */
export const brokenLines = (words: string, width: number, bold = false): readonly string[] => {
  const parts = words
    .split(' ')
    .filter((word) => word !== '')
    .flatMap((word) => partsOf(word, width, bold));
  const lines = greedy(parts, width, bold);
  if (lines.length < 2 || textWidth(lines.at(-1)!, bold) > FORGOTTEN * width) return lines;
  // A handful of halvings finds the narrowest width that takes no more lines.
  let [low, high] = [width / 2, width];
  for (let i = 0; i < 6; i++) {
    const middle = (low + high) / 2;
    if (greedy(parts, middle, bold).length > lines.length) low = middle;
    else high = middle;
  }
  return greedy(parts, high, bold);
};

/** What stays together on a line, and what comes before it where that line has begun. */
interface Part {
  readonly text: string;
  readonly joint: '' | ' ';
}

const partsOf = (word: string, width: number, bold: boolean): readonly Part[] =>
  textWidth(word, bold) <= width
    ? [{ text: word, joint: ' ' }]
    : lettersOf(word).map((text, i) => ({ text, joint: i === 0 ? ' ' : '' }));

const greedy = (parts: readonly Part[], width: number, bold: boolean): readonly string[] => {
  const lines: string[] = [];
  for (const { text, joint } of parts) {
    const joined = `${lines.at(-1) ?? ''}${joint}${text}`;
    if (lines.length > 0 && textWidth(joined, bold) <= width) lines[lines.length - 1] = joined;
    else lines.push(text);
  }
  return lines;
};
