import { say } from '../words.ts';
import { glossary, type Term } from './glossary.ts';
import type { Step } from './step.ts';

/** The trade words of each step that no step before it used. */
export const termsOf = (steps: readonly Step[]): readonly (readonly Term[])[] => {
  const known = new Set<string>();
  return steps.map((step) => {
    const text = [
      step.title,
      ...[...step.words, ...step.checks, ...step.cautions].map((s) => say(s, 'cm')),
    ].join(' ');
    const fresh = glossary.filter(({ word, found }) => !known.has(word) && found.test(text));
    for (const { word } of fresh) known.add(word);
    return fresh;
  });
};
