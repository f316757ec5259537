import { LONGEST_NAME } from './reading.ts';

/** What caps are called by themselves: by their wearer and one of these. */
const WORDS = ['cap', 'hat'] as const;

/** What a cap is called that was given no name: "Cornet’s cap", or "Cap" where its wearer has none either. */
export const nameForWearer = (wearer: string, word: (typeof WORDS)[number] = 'cap'): string =>
  wearer === '' ? word.charAt(0).toUpperCase() + word.slice(1) : ending(wearer, `’s ${word}`);

/** The name of a cap whose wearer is called otherwise now: one that was never given follows, also with a number after it; a given one stays. */
export const nameFollowing = (name: string, before: string, after: string): string => {
  for (const word of WORDS) {
    const own = nameForWearer(before.trim(), word);
    const rest = name.startsWith(own) ? name.slice(own.length) : null;
    if (rest !== null && /^( \d+)?$/.test(rest)) return ending(nameForWearer(after.trim(), word), rest);
  }
  return name;
};

/** The name itself, or with the first number that sets it apart from the names there are. */
export const freeName = (name: string, names: readonly string[]): string => {
  if (!names.includes(name)) return name;
  const stem = name.replace(/ \d+$/, '');
  let n = 2;
  while (names.includes(ending(stem, ` ${n}`))) n++;
  return ending(stem, ` ${n}`);
};

/** A name with an end to it, cut before that where it would be too long. */
const ending = (stem: string, end: string): string => stem.slice(0, LONGEST_NAME - end.length) + end;
