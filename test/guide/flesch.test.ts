import { expect, test } from 'vitest';
import { readingEase, syllablesOf } from './flesch.ts';

// Counted by hand, as a dictionary parts them.
const counted: readonly (readonly [string, number])[] = [
  ['sew', 1],
  ['edge', 1],
  ['allowance', 3],
  ['sweatband', 2],
  ['visor', 2],
  ['topstitch', 2],
  ['interlining', 4],
  ['notches', 2],
  ['seam', 1],
  ['pieces', 2],
  ['together', 3],
  ['stiffener', 3],
  ['basted', 2],
  ['pressed', 1],
  ['turned', 1],
  ['gather', 2],
  ['middle', 2],
  ['needle', 2],
  ['inside', 2],
  ['elastic', 3],
  ['quarter', 2],
  ['buckle', 2],
  ['crown', 1],
  ['open', 2],
  ['outer', 2],
  ['curve', 1],
  ['curves', 1],
  ['side', 1],
  ['sides', 1],
  ['machine', 2],
  ['iron', 2],
  ['evenly', 3],
  ['careful', 2],
  ['loose', 1],
  ['closed', 1],
  ['folded', 2],
  ['marks', 1],
  ['buttonhole', 3],
  ['lining', 2],
  ['people', 2],
  ['whole', 1],
  ['loses', 2],
  ['scale', 1],
];

test.each(counted)('%s has %i syllables', (word, syllables) => {
  expect(syllablesOf(word)).toBe(syllables);
});

test('the formula gives what it gives by hand', () => {
  // Six words, one sentence, six syllables: 206.835 − 1.015 × 6 − 84.6.
  expect(readingEase('The cat sat on the mat.')).toBeCloseTo(116.145, 6);
  // Figures are left out.
  expect(readingEase('The cat sat on the mat 12.5 cm.')).toBeCloseTo(116.145, 6);
});
