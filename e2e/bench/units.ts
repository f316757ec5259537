import { type Figure, part } from './figures.ts';

/** What was measured side by side, under one name. Every single time, ms. */
export interface Group {
  readonly name: string;
  readonly benchmarks: readonly { readonly name: string; readonly samples: readonly number[] }[];
}

/** Our own part of a group; what else is in it, it is compared with. */
const OURS = 'ours';

/** What is wanted of a group, by how its name begins. */
const wishes: Readonly<
  Record<string, { readonly wanted: string; readonly met: (ms: number, ratio: number) => boolean }>
> = {
  'spec to checked draft': { wanted: 'median at most 2 ms', met: (ms) => ms <= 2 },
  'first lay of 20 pieces': { wanted: 'median at most 150 ms', met: (ms) => ms <= 150 },
  'cut lines of all pieces': { wanted: 'at most 1×', met: (_, ratio) => ratio <= 1 },
};

/** A group that is measured by how close it lays, not by its time, and prints that itself. */
const PRINTED = 'public test sets';

/** One row for each comparison of a group, or one where there is nothing to compare with. */
export const figuresOfUnits = (groups: readonly Group[]): Figure[] =>
  groups.filter(({ name }) => name !== PRINTED).flatMap(figuresOf);

const figuresOf = ({ name: subject, benchmarks }: Group): Figure[] => {
  const own = benchmarks.find(({ name }) => name === OURS);
  if (own === undefined) throw new Error(`${subject}: nothing of our own was measured`);
  const wish = Object.entries(wishes).find(([begins]) => subject.startsWith(begins))?.[1];
  const median = part(own.samples, 0.5);
  const alone = { subject, median, high: part(own.samples, 0.95), unit: 'ms' } as const;
  const judged = (ratio: number) =>
    wish === undefined ? {} : { wanted: wish.wanted, met: wish.met(median, ratio) };
  const others = benchmarks.filter(({ name }) => name !== OURS);
  // Is there nothing to compare it with?
  if (others.length === 0) return [{ ...alone, ...judged(Number.NaN) }];
  return others.map(({ name, samples }) => {
    const ratio = median / part(samples, 0.5);
    return { ...alone, against: { name, ratio }, ...judged(ratio) };
  });
};
