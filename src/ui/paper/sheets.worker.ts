import type { SheetSet } from '../../print/sheet.ts';
import { type SheetsOrder, sheetsFor } from './sheets-for.ts';

/** What was asked for in which turn, and the sheets that came of it. */
export interface ToSheets {
  readonly turn: number;
  readonly order: SheetsOrder;
}
export interface FromSheets {
  readonly turn: number;
  readonly set: SheetSet | null;
}

/** Lays out sheets off the page's own thread: a hand that goes on while they are laid out is not held up. */
const answer = async ({ turn, order }: ToSheets): Promise<void> => {
  const set = await sheetsFor(order);
  self.postMessage({ turn, set } satisfies FromSheets);
};

self.addEventListener('message', ({ data }: MessageEvent<ToSheets>) => {
  answer(data).catch(reportError);
});
