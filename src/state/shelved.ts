import type { SavedSpec } from '../design/decode.ts';
import { demoCaps } from '../design/demo-band.ts';

/** The number of the cap on the table on a first visit. */
export const FIRST_CAP = 1;

/** What was wished of a cap, and the last such wish that could be drafted. */
export interface SavedCap {
  readonly wish: SavedSpec;
  readonly good: SavedSpec;
}

/** A cap as a file holds it: with the steps of its sewing that are done. Files of before have none. */
export interface FiledCap extends SavedCap {
  readonly ticks?: readonly string[];
}

/** A cap that lies on the shelf as it left the table. It is read when it is wanted: its style may not be there yet. */
export interface Shelved extends SavedCap {
  /** Unlike that of any other cap; the later made, the larger. */
  readonly id: number;
}

/** The shelf of a first visit: the demo's caps, numbered after the one on the table. */
export const demoShelf: readonly Shelved[] = demoCaps.map((saved, i) => ({
  id: FIRST_CAP + 1 + i,
  wish: saved,
  good: saved,
}));

/** Caps that are made take far larger numbers. */
export const isOfDemo = ({ id }: Shelved): boolean => demoShelf.some((cap) => cap.id === id);

/** Numbers follow the clock, so that none comes twice, whatever was removed or taken back. */
export const nextId = (ids: readonly number[]): number => Math.max(Date.now(), ...ids.map((id) => id + 1));

/** A file adds no more than fill the shelf up to this: more than any band has heads. */
export const MOST_CAPS = 100;

/** Reads a kept shelf, leaving out whatever is no cap at all. */
export const decodeShelf = (data: unknown): readonly Shelved[] =>
  Array.isArray(data) ? data.filter(isShelved) : [];

/** More than any cap has steps. */
const MOST_TICKS = 200;

/** Reads the ticks of one cap, leaving out whatever is none. */
export const decodeCapTicks = (data: unknown): readonly string[] =>
  Array.isArray(data) ? data.filter(isTick).slice(0, MOST_TICKS) : [];

const isTick = (id: unknown): id is string => typeof id === 'string' && id.length < 80;

/** Its name, which may be damaged: none then. */
export const savedName = ({ wish }: SavedCap): string => {
  const name: unknown = wish.spec?.cap?.name;
  return typeof name === 'string' ? name.trim() : '';
};

const isShelved = (data: unknown): data is Shelved =>
  isSavedCap(data) && isCapId((data as Partial<Shelved>).id);

/** Whether it looks like a saved cap: what is damaged within is mended when it is read. */
export const isSavedCap = (data: unknown): data is SavedCap => {
  const { wish, good } = (isRecord(data) ? data : {}) as Partial<Record<keyof SavedCap, unknown>>;
  return isRecord(wish) && isRecord(good);
};

export const isCapId = (id: unknown): id is number => Number.isSafeInteger(id) && (id as number) > 0;

const isRecord = (data: unknown): boolean => typeof data === 'object' && data !== null;
