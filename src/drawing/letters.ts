/** The letters of a text as its readers count them: an accent or another sign that belongs to a letter stays with it. */
export const lettersOf = (text: string): readonly string[] =>
  [...new Intl.Segmenter(undefined, { granularity: 'grapheme' }).segment(text)].map(({ segment }) => segment);
