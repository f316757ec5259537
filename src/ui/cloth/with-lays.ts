import { withLays } from '../../print/lay-sheets.ts';
import type { SheetSet } from '../../print/sheet.ts';
import type { Chosen } from './caps-to-cut.ts';
import { laysOf } from './lays-of.ts';

/** The sheets of the pattern with the cutting lays of the same cap after them. */
export const sheetsWithLays = async (set: SheetSet, chosen: Chosen, signal: AbortSignal): Promise<SheetSet> =>
  withLays(set, await laysOf(chosen, signal));
