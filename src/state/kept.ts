import { isStyleId, type StyleId } from '../caps/registry.ts';
import { decodeSpec, encodeSpec, type SavedSpec } from '../design/decode.ts';
import { derived } from './derived.ts';
import { type Stage, stages } from './stage.ts';
import type { Studio, Theme } from './state.ts';
import { decodeTyped, type Typed } from './typed.ts';
import { decodeWorn, type WornWish } from './worn-wish.ts';

/** The part of the state that outlives a reload. */
export interface Kept {
  readonly wish: SavedSpec;
  readonly good: SavedSpec;
  readonly typed: Readonly<Record<string, Typed>>;
  readonly stage: Stage;
  readonly theme: Theme;
  readonly worn: WornWish;
  readonly ticks: readonly string[];
}

export const toKeep = ({ wish, good, typed, stage, theme, worn, ticks }: Studio): Kept => ({
  wish: encodeSpec(wish),
  good: encodeSpec(good),
  typed,
  stage,
  theme,
  worn,
  ticks,
});

type Restored = Pick<Studio, 'wish' | 'good' | 'typed' | 'stage' | 'theme' | 'worn' | 'ticks' | 'notice'>;

/** The styles that have to be there before what was kept can be read. */
export const stylesKept = (kept: unknown): readonly StyleId[] => {
  const { wish, good } = (kept ?? {}) as { readonly [K in 'wish' | 'good']?: MaybeSaved };
  return [wish, good].map((saved) => saved?.spec?.cap?.style).filter(isStyleId);
};

type MaybeSaved = { readonly spec?: { readonly cap?: { readonly style?: unknown } } } | undefined;

/** What was on the table last time, mended where the browser's keeping was damaged. `first` is the state of a first visit. */
export const restore = (kept: unknown, first: Studio): Restored => {
  if (kept === undefined) return first;
  const data = (typeof kept === 'object' && kept !== null ? kept : {}) as Partial<
    Record<keyof Kept, unknown>
  >;
  const { spec: wish, repaired } = decodeSpec(data.wish);
  return {
    wish,
    good: lastGood(wish, data.good, first),
    typed: decodeTyped(data.typed),
    stage: stages.find((stage) => stage === data.stage) ?? first.stage,
    theme: data.theme === 'light' || data.theme === 'dark' ? data.theme : 'system',
    worn: decodeWorn(data.worn),
    ticks: decodeTicks(data.ticks),
    notice: noticeOf(repaired),
  };
};

/** More than any cap has steps. */
const MOST_TICKS = 200;

const decodeTicks = (data: unknown): readonly string[] =>
  Array.isArray(data)
    ? data.filter((id): id is string => typeof id === 'string' && id.length < 80).slice(0, MOST_TICKS)
    : [];

/** The wish itself if it drafts, else what drafted last, else the demo. The wish keeps its own identity, so that it is derived once. */
const lastGood = (wish: Studio['wish'], saved: unknown, first: Studio): Studio['good'] => {
  if (derived(wish).draft !== null) return wish;
  const { spec } = decodeSpec(saved);
  return derived(spec).draft === null ? first.good : spec;
};

const noticeOf = (repaired: readonly string[]): string | null => {
  if (repaired.length === 0) return null;
  if (repaired.includes('spec')) {
    return 'What this browser had kept could not be read, so the demo cap is on the table.';
  }
  return 'Part of what this browser had kept could not be read. Those choices are back at their usual values: please look them over.';
};
