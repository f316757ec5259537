import type { LayCap } from './lay-wish.ts';

/** What the caps of a lay are called: by number where they have no name, or one that another has. */
export const capNames = (caps: readonly Pick<LayCap, 'name'>[]): readonly string[] => {
  const names = caps.map(({ name }) => name.trim());
  return names.map((name, i) => {
    if (name === '') return `Cap ${i + 1}`;
    return names.indexOf(name) < i ? `${name} (${i + 1})` : name;
  });
};

/** All caps of a lay in one line: "3 × Cornet’s cap, Tenor horn’s cap". */
export const capsInWords = (caps: readonly Pick<LayCap, 'name' | 'count'>[]): string =>
  capNames(caps)
    .map((name, i) => (caps[i]!.count > 1 ? `${caps[i]!.count} × ${name}` : name))
    .join(', ');
