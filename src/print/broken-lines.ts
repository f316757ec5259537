import { textWidth } from '../drawing/text-width.ts';

/** A last line shorter than this share of the width looks forgotten: the words are then shared out evenly. */
const FORGOTTEN = 0.3;

/** Words broken into lines of at most a width, in ems. A word that is wider has a line of its own. */
export const brokenLines = (words: string, width: number, bold = false): readonly string[] => {
  const lines = greedy(words, width, bold);
  if (lines.length < 2 || textWidth(lines.at(-1)!, bold) > FORGOTTEN * width) return lines;
  // A handful of halvings finds the narrowest width that takes no more lines.
  let [low, high] = [width / 2, width];
  for (let i = 0; i < 6; i++) {
    const middle = (low + high) / 2;
    if (greedy(words, middle, bold).length > lines.length) low = middle;
    else high = middle;
  }
  return greedy(words, high, bold);
};

const greedy = (words: string, width: number, bold: boolean): readonly string[] => {
  const lines: string[] = [];
  for (const word of words.split(' ').filter((w) => w !== '')) {
    const joined = `${lines.at(-1) ?? ''} ${word}`;
    if (lines.length > 0 && textWidth(joined, bold) <= width) lines[lines.length - 1] = joined;
    else lines.push(word);
  }
  return lines;
};
