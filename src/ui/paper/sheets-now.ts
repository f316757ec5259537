import { rowsOf, withRows } from '../../guide/rows.ts';
import type { SheetSet } from '../../print/sheet.ts';
import { derived } from '../../state/derived.ts';
import type { Studio } from '../../state/state.ts';
import { useStudio } from '../../state/studio.ts';
import { today } from '../today.ts';

/** The sheets of what lies on the table, and whether they are still being laid out again. */
export interface SheetsNow {
  readonly set: SheetSet | null;
  readonly stale: boolean;
}

let now: SheetsNow = { set: null, stale: true };
const listeners = new Set<() => void>();

const tell = (next: SheetsNow): void => {
  now = next;
  for (const listener of listeners) listener();
};

export const sheetsNow = (): SheetsNow => now;
export const onSheets = (listener: () => void): (() => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};

/** Sheets are laid out once the hand has rested this long, ms: never while a slider moves. */
const REST = 300;
/** The same while a field is still held: a slider may only have paused, and a typed figure need not be left first. */
const PAUSE = 900;

/** Lays the sheets out again whenever what they show has changed and rests. Returns how to stop. */
export const keepSheets = (): (() => void) => {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const soon = (wait: number) => {
    clearTimeout(timer);
    timer = setTimeout(() => void layOut(), wait);
    if (!now.stale) tell({ ...now, stale: true });
  };
  const stop = useStudio.subscribe((state, before) => {
    const held = state.moving !== null;
    const letGo = !held && before.moving !== null;
    if (changes(state, before) || (now.stale && letGo)) soon(held ? PAUSE : REST);
  });
  soon(REST);
  return () => {
    clearTimeout(timer);
    stop();
  };
};

const changes = (state: Studio, before: Studio): boolean =>
  state.good !== before.good ||
  state.wish.paper !== before.wish.paper ||
  // The picture on the first sheet is drawn once the sheets are looked at.
  (state.stage === 'paper' && before.stage !== 'paper') ||
  state.wish.unit !== before.wish.unit;

/** The paper as wished, on the last cap that can be sewn. */
const layOut = async (): Promise<void> => {
  const [{ drawPattern }, { sheetsOf }, { paperProblems }] = await Promise.all([
    import('../../drawing/draw-piece.ts'),
    import('../../print/sheets.ts'),
    import('../../print/paper-problems.ts'),
  ]);
  const { good, wish, stage } = useStudio.getState();
  const { draft } = derived(good);
  // A paper that cannot be printed on has its problem beside it; the last sheets stay.
  if (draft === null || paperProblems(wish.paper).length > 0) return;
  const facts = {
    cap: good.cap.name.trim(),
    wearer: good.head.name.trim(),
    finishedGirth: draft.finishedGirth,
    date: today(),
  };
  const pieces = withRows(draft.cutting.pieces, rowsOf({ ...draft, cloths: good.cloths }));
  const drawings = drawPattern(
    { ...draft.cutting, pieces },
    {
      unit: wish.unit,
      halves: wish.paper.halves,
      dimensions: false,
      label: facts,
    },
  );
  const picture =
    stage === 'paper' ? await import('../preview/picture-now.ts').then((m) => m.pictureNow(good)) : null;
  // Has something changed while that was fetched? Then it is laid out again in a while.
  const later = useStudio.getState();
  if (later.good !== good || later.wish.paper !== wish.paper || later.wish.unit !== wish.unit) return;
  tell({ set: sheetsOf(drawings, wish.paper, { ...facts, unit: wish.unit }, picture), stale: false });
};
