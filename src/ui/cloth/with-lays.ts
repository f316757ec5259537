import { withLays } from '../../print/lay-sheets.ts';
import type { SheetSet } from '../../print/sheet.ts';
import { derived } from '../../state/derived.ts';
import { useStudio } from '../../state/studio.ts';
import { layNow } from './lay-now.ts';
import { laysOf } from './needs.ts';

/** The sheets of the pattern with the cutting lays of the same cap after them. */
export const sheetsWithLays = async (set: SheetSet): Promise<SheetSet> => {
  const { draft } = derived(useStudio.getState().good);
  return draft === null ? set : withLays(set, await laysOf(draft, layNow().lay));
};
