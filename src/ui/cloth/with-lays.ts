import { withLays } from '../../print/lay-sheets.ts';
import type { SheetSet } from '../../print/sheet.ts';
import { useStudio } from '../../state/studio.ts';
import { capsNow, layNow } from './lay-now.ts';
import { laysOf } from './needs.ts';

/** The sheets of the pattern with the cutting lays of the same cap after them. */
export const sheetsWithLays = async (set: SheetSet): Promise<SheetSet> => {
  const caps = await capsNow();
  const { good } = useStudio.getState();
  return caps.length === 0 ? set : withLays(set, await laysOf(caps, good.cloths, layNow().lay));
};
