import { withBooklet } from '../../print/booklet/booklet.ts';
import type { SheetSet } from '../../print/sheet.ts';
import { drafted } from '../../state/derived.ts';
import type { Studio } from '../../state/state.ts';
import { bookletContent } from './booklet-content.ts';
import { guideNow } from './guide-now.ts';

/** The sheets of the pattern with the order of work of the same cap after them. */
export const sheetsWithBooklet = (set: SheetSet, { good, wish }: Pick<Studio, 'good' | 'wish'>): SheetSet => {
  const draft = drafted(good);
  return draft === null ? set : withBooklet(set, bookletContent(draft, guideNow(draft), wish.unit));
};
