import { test } from 'playwright/test';

/** One row of the table of figures. */
export interface Figure {
  readonly subject: string;
  readonly median: number;
  /** Not slower than this in 95 of 100. */
  readonly high?: number;
  readonly unit: 'ms' | 'KiB' | '×';
  /** What it is compared with, measured in the same run. */
  readonly against?: { readonly name: string; readonly ratio: number };
  readonly wanted?: string;
  readonly met?: boolean;
}

const NOTE = 'figure';

/** Hands a figure on to the table at the end of the run. */
export const note = (figure: Figure): void => {
  test.info().annotations.push({ type: NOTE, description: JSON.stringify(figure) });
};

export const notedIn = (
  annotations: readonly { readonly type: string; readonly description?: string }[],
): Figure[] =>
  annotations.flatMap(({ type, description }) =>
    type === NOTE && description !== undefined ? [JSON.parse(description) as Figure] : [],
  );

/** The value that this part of all values do not exceed: 0.5 gives the median. */
export const part = (values: readonly number[], share: number): number => {
  if (values.length === 0) throw new RangeError('nothing was measured');
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(Math.floor(sorted.length * share), sorted.length - 1)]!;
};
