import { flatTop } from './flat-top/flat-top.ts';
import { flatTopLining } from './flat-top/lining.ts';
import type { Style, StyleLining } from './style.ts';

/** How the lining of a style stands; null where it never has one. That of the first visit's style comes with what shows it. */
export const liningOf = (style: Pick<Style, 'id' | 'lining'>): StyleLining | null =>
  style.id === flatTop.id ? flatTopLining : (style.lining ?? null);
