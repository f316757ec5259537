import { isFetched, isStyleId, type StyleId } from '../caps/registry.ts';
import { decodeSpec, encodeSpec, type SavedSpec } from '../design/decode.ts';
import { decodeHeads } from '../design/decode-head.ts';
import { defaultSpec } from '../design/default-spec.ts';
import type { HeadSpec, Spec } from '../design/spec.ts';
import { canBeSewn } from './derived.ts';
import { decodeLay, type LayChoice } from './lay-choice.ts';
import { decodeCapTicks, decodeShelf, isCapId, nextId, type Shelved } from './shelved.ts';
import { type Stage, stages } from './stage.ts';
import type { Studio, Theme, Ticks } from './state.ts';
import { decodeTyped, type Typed } from './typed.ts';
import { decodeWorn, type WornWish } from './worn-wish.ts';

/** The part of the state that outlives a reload. */
export interface Kept {
  readonly wish: SavedSpec;
  readonly good: SavedSpec;
  readonly capId: number;
  readonly shelf: readonly Shelved[];
  readonly heads: readonly HeadSpec[];
  readonly typed: Readonly<Record<string, Typed>>;
  readonly stage: Stage;
  readonly theme: Theme;
  readonly worn: WornWish;
  readonly lay: LayChoice;
  readonly ticks: Ticks;
}

export const toKeep = (studio: Studio): Kept => {
  const { wish, good, capId, shelf, heads, typed, stage, theme, worn, lay, ticks } = studio;
  return {
    wish: encodeSpec(wish),
    good: encodeSpec(good),
    capId,
    shelf,
    heads,
    typed,
    stage,
    theme,
    worn,
    lay,
    ticks,
  };
};

type Restored = Pick<Studio, keyof Kept | 'notice'>;

/** The styles that have to be there before what was kept can be read. */
export const stylesKept = (kept: unknown): readonly StyleId[] => {
  const { wish, good } = (kept ?? {}) as { readonly [K in 'wish' | 'good']?: MaybeSaved };
  return [...new Set([wish, good].map((saved) => saved?.spec?.cap?.style).filter(isStyleId))];
};

type MaybeSaved = { readonly spec?: { readonly cap?: { readonly style?: unknown } } } | undefined;

type Data = Partial<Record<keyof Kept, unknown>>;

const UNFETCHED =
  'The style of your last cap could not be fetched, so the demo cap is on the table. Yours is on the shelf.';

/** What was on the table last time, mended where the browser's keeping was damaged. `first` is the state of a first visit. */
export const restore = (kept: unknown, first: Studio): Restored => {
  if (kept === undefined) return first;
  const data: Data = typeof kept === 'object' && kept !== null ? kept : {};
  return stylesKept(data).every(isFetched)
    ? restored(data, first)
    : { ...restored(withCapShelved(data, first), first), notice: UNFETCHED };
};

/** The cap on the table goes on the shelf unread, and that of a first visit takes its place. */
const withCapShelved = (data: Data, first: Studio): Data => {
  const { capId, shelf, wish, good } = data;
  const id = isCapId(capId) ? capId : first.capId;
  const others = decodeShelf(shelf);
  return {
    ...data,
    wish: encodeSpec(first.wish),
    good: encodeSpec(first.good),
    capId: nextId([id, ...others.map((cap) => cap.id)]),
    shelf: [...others, { id, wish: wish ?? good, good: good ?? wish }],
    typed: {},
    lay: { ...(data.lay as object | undefined), pins: [] },
  };
};

const restored = (data: Data, first: Studio): Restored => {
  const { spec: wish, repaired } = decodeSpec(data.wish);
  const capId = isCapId(data.capId) ? data.capId : first.capId;
  const shelf = data.shelf === undefined ? first.shelf : decodeShelf(data.shelf);
  return {
    wish,
    good: lastGood(wish, data.good),
    capId,
    shelf,
    heads: data.heads === undefined ? first.heads : decodeHeads(data.heads),
    typed: decodeTyped(data.typed),
    stage: stages.find((stage) => stage === data.stage) ?? first.stage,
    theme: data.theme === 'light' || data.theme === 'dark' ? data.theme : 'system',
    worn: decodeWorn(data.worn),
    lay: decodeLay(data.lay, shelf),
    ticks: decodeTicks(data.ticks, [capId, ...shelf.map(({ id }) => id)]),
    notice: noticeOf(repaired),
  };
};

/** Of caps that are there: one that was removed cannot be brought back after a reload. */
const decodeTicks = (data: unknown, caps: readonly number[]): Ticks =>
  Object.fromEntries(
    Object.entries(typeof data === 'object' && data !== null ? data : {}).flatMap(([id, ids]) =>
      caps.includes(Number(id)) ? [[id, decodeCapTicks(ids)]] : [],
    ),
  );

/** The wish itself if it can be sewn, else what could be last, else the demo. The wish keeps its own identity, so that it is drafted once. */
export const lastGood = (wish: Spec, saved: unknown): Spec => {
  if (canBeSewn(wish)) return wish;
  const { spec } = decodeSpec(saved);
  return canBeSewn(spec) ? spec : defaultSpec;
};

export const noticeOf = (repaired: readonly string[]): string | null => {
  if (repaired.length === 0) return null;
  if (repaired.includes('spec')) {
    return 'What this browser had kept could not be read, so the demo cap is on the table.';
  }
  return 'Part of what this browser had kept could not be read. Those choices are back at their usual values: please look them over.';
};
