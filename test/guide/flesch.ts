/**
 * Flesch reading ease: 206.835 − 1.015 × words per sentence − 84.6 × syllables per word (R. Flesch, "A new readability
 * yardstick", Journal of Applied Psychology 32, 1948). 60 and over is plain English. Figures are left out, as Flesch
 * advises for texts with many (from memory).
 */
export const readingEase = (text: string): number => {
  const plain = text
    .replace(/−?\d[\d.,]*( \d+\/\d+|\/\d+)? ?(cm|mm|in|%|°)?(?![a-z])/gi, ' ')
    .replace(/[’']s\b/g, 's');
  const sentences = plain.split(/[.!?:]+(?:\s|$)/).filter((s) => /[a-z]/i.test(s));
  const words = sentences.flatMap((s) => s.match(/[a-z]+/gi) ?? []);
  if (words.length === 0) return Number.NaN;
  const syllables = words.reduce((sum, word) => sum + syllablesOf(word), 0);
  return 206.835 - (1.015 * words.length) / sentences.length - (84.6 * syllables) / words.length;
};

/** Syllables of an English word, by its groups of vowels: our own counter, right for the words listed in its test. */
export const syllablesOf = (word: string): number => {
  const lower = word.toLowerCase().replace(/[^a-z]/g, '');
  const own = EXCEPTIONS[lower];
  if (own !== undefined) return own;
  const stem = lower
    // A last e is silent, but not after a consonant and l; so are the e of -ed and -es but for those that sound.
    .replace(/([^aeiouyl])e$/, '$1')
    .replace(/([aeiouy]l)e$/, '$1')
    .replace(/([^aeiouytd])ed$/, '$1d')
    .replace(/([^aeiouysxzcgh])es$/, '$1s')
    .replace(/([aeiouy][^aeiouy]+)e(ly|ment|less|ful|ness)(s?)$/, '$1$2$3');
  return Math.max(1, (stem.match(/[aeiouy]+/g) ?? []).length);
};

const EXCEPTIONS: Readonly<Record<string, number>> = {
  iron: 2,
  being: 2,
  area: 3,
  create: 2,
  idea: 3,
  via: 2,
  lying: 2,
  tie: 1,
  sewing: 2,
  sewn: 1,
};
