import { fetchStyle } from '../caps/registry.ts';
import { freeName } from '../design/cap-name.ts';
import { decodeSpec, encodeSpec, isLater, type SavedSpec } from '../design/decode.ts';
import { newCap } from '../design/new-cap.ts';
import type { HeadSpec, Spec } from '../design/spec.ts';
import { putBack, settle, wishing } from './actions.ts';
import { canBeSewn } from './derived.ts';
import { lastGood, noticeOf, stylesKept } from './kept.ts';
import { lastPress } from './last-press.ts';
import {
  decodeCapTicks,
  type FiledCap,
  MOST_CAPS,
  nextId,
  type SavedCap,
  type Shelved,
  savedName,
} from './shelved.ts';
import type { Studio } from './state.ts';
import { useStudio } from './studio.ts';

const get = useStudio.getState;

/** A cap of the shelf as it can be drafted. */
export interface Opened {
  readonly wish: Spec;
  /** The wish itself or the last that could be drafted; in a damaged cap it may not be either. */
  readonly good: Spec;
  /** What of the wish was damaged and stands at its usual value. */
  readonly repaired: readonly string[];
}

const opened = new WeakMap<Shelved, Promise<Opened>>();

/** Reads a cap of the shelf, once, after its style was fetched. */
export const openShelved = (cap: Shelved): Promise<Opened> => {
  const before = opened.get(cap);
  if (before) return before;
  const now = readShelved(cap);
  opened.set(cap, now);
  // Perhaps the next try finds the way.
  now.catch(() => opened.delete(cap));
  return now;
};

const readShelved = async (cap: SavedCap): Promise<Opened> => {
  await Promise.all(stylesKept(cap).map(fetchStyle));
  const { spec: wish, repaired } = decodeSpec(cap.wish);
  return { wish, good: !canBeSewn(wish) ? decodeSpec(cap.good).spec : wish, repaired };
};

/** Takes a cap from the shelf to the table; the one that lay there goes on the shelf. Paper and unit stay. */
export const takeToTable = async (cap: Shelved): Promise<void> => {
  const isLast = lastPress();
  if (isLater(cap.wish)) return say(LATER);
  try {
    const { wish, repaired } = await openShelved(cap);
    if (!isLast()) return;
    leaveTable();
    const { shelf, wish: present } = get();
    if (!shelf.includes(cap)) return;
    const { paper, unit } = present;
    const here = { ...wish, paper, unit };
    const good = lastGood(wish, cap.good);
    put({
      wish: here,
      good: good === wish ? here : { ...good, paper, unit },
      capId: cap.id,
      shelf: [...shelf.filter((one) => one !== cap), onShelf()],
    });
    // Paper and unit are those that stay.
    const mended = repaired.filter((field) => field !== 'unit' && !field.startsWith('paper'));
    if (mended.length > 0) say(noticeOf(mended));
  } catch {
    say('This cap’s style could not be fetched. Please reload the page when there is a connection.');
  }
};

const LATER = 'This cap was saved by a later Capwright: please reload the page to bring this one up to date.';
const say = (notice: string | null): void => {
  useStudio.setState({ notice });
};

/** Begins a cap for a head in the style on the table; the cap that lay there goes on the shelf. */
export const startCap = (head: HeadSpec): void => {
  leaveTable();
  beside(newCap(get().wish, head, namesKept()));
};

/** Goes on with a copy under a name of its own; the cap itself goes on the shelf. */
export const copyCap = (): void => {
  leaveTable();
  const { wish } = get();
  beside({ ...wish, cap: { ...wish.cap, name: freeName(wish.cap.name.trim(), namesKept()) } });
};

export const removeFromShelf = (cap: Shelved): void => {
  leaveTable();
  useStudio.setState(({ shelf }) => ({ shelf: shelf.filter((one) => one !== cap) }));
};

/** What became of caps that came from elsewhere. */
export interface Taken {
  readonly added: number;
  /** Left out, since they are there already. */
  readonly known: number;
  /** Left out, since the shelf is full. */
  readonly roomless: number;
}

/** Lays caps on the shelf that come from elsewhere and are not there yet, as many as there is room for. */
export const addToShelf = async (caps: readonly FiledCap[]): Promise<Taken> => {
  leaveTable();
  const met = new Set(await Promise.all([...get().shelf, onShelf()].map(likeness)));
  const fresh: FiledCap[] = [];
  for (const cap of caps) {
    const like = await likeness(cap);
    if (!met.has(like)) fresh.push(cap);
    met.add(like);
  }
  const { shelf, ticks } = get();
  const taken = fresh.slice(0, Math.max(0, MOST_CAPS - shelf.length));
  const first = freeId();
  const added = taken.map(({ wish, good }, i): Shelved => ({ id: first + i, wish, good }));
  const done = Object.fromEntries(taken.map((cap, i) => [first + i, decodeCapTicks(cap.ticks)]));
  // Nothing added is no step of undo.
  if (added.length > 0) useStudio.setState({ shelf: [...shelf, ...added], ticks: { ...ticks, ...done } });
  return {
    added: added.length,
    known: caps.length - fresh.length,
    roomless: fresh.length - taken.length,
  };
};

/**
 * What makes a cap the one it is: all that is wished of it but its paper and its unit, which are those of the table. One that is
 * damaged, or whose style cannot be fetched, is known only by how it was written.
 */
const likeness = async (saved: SavedCap): Promise<string> => {
  const read = await readShelved(saved).catch(() => null);
  if (read === null || read.repaired.length > 0) return JSON.stringify(saved.wish);
  const { head, cap, cloths } = read.wish;
  return JSON.stringify([head, cap.style, cap.name, Object.entries(cap.values).sort(), cloths]);
};

/** A cap of the shelf, or that on the table, as a file holds it. */
export const filed = ({ id, wish, good }: Shelved): FiledCap => ({
  wish,
  good,
  ticks: get().ticks[id] ?? [],
});

const leaveTable = (): void => {
  putBack();
  settle();
};

/** The cap on the table as it is laid on the shelf. */
export const onShelf = (): Shelved => {
  const { capId, wish, good } = get();
  const saved: SavedSpec = encodeSpec(wish);
  return { id: capId, wish: saved, good: good === wish ? saved : encodeSpec(good) };
};

/** Puts a cap on the table that was not there before, and the one that was on the shelf. */
const beside = (wish: Spec): void => {
  lastPress();
  const { shelf } = get();
  put({ good: get().good, ...wishing(wish), capId: freeId(), shelf: [...shelf, onShelf()] });
};

/** What was typed, chosen or put down by hand was of the cap before. */
const put = (changed: Pick<Studio, 'wish' | 'good' | 'capId' | 'shelf'>): void => {
  const lay = { ...get().lay, pins: [] };
  useStudio.setState({ ...changed, lay, typed: {}, chosen: null, lit: null, litSeam: null });
};

const freeId = (): number => nextId([get().capId, ...get().shelf.map(({ id }) => id)]);

const namesKept = (): readonly string[] => [get().wish.cap.name.trim(), ...get().shelf.map(savedName)];
