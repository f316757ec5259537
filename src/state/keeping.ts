import type { PersistStorage, StorageValue } from 'zustand/middleware';
import { onceResting } from './resting.ts';

/** Long enough to leave a slider in peace, short enough to lose nothing if the power goes, ms. */
const REST = 250;

interface Keeping<S> extends PersistStorage<S> {
  /**
   * Takes a state as one that is kept already: to write it again, for a notice that nothing keeps, would take the place of
   * what another tab has kept since.
   */
  readonly asKept: (value: StorageValue<S>) => void;
  /** Keeps what is here in the place of what another tab kept, and goes on keeping what is changed. */
  readonly keepHere: () => void;
}

interface Told {
  /** The browser refuses to keep anything, or has no room left. */
  readonly refused: () => void;
  /** It keeps again what is changed. */
  readonly keptAgain: () => void;
  /** Another tab has kept something in the same place. */
  readonly elsewhere: () => void;
}

/**
 * Keeps the state in the browser under one name. Writing waits for a rest and happens at the latest when the page is left,
 * so that dragging a slider is never held up. A browser that refuses is not an error: it is told once. What another tab has kept
 * is left alone until `keepHere` or a reload: here is an older state, of which any change would write the whole.
 */
export const keeping = <S>(place: string, told: Told): Keeping<S> => {
  let waiting: { readonly name: string; readonly value: StorageValue<S> } | null = null;
  let refused = false;
  let heldBack = false;
  let last: string | null = null;

  const refuse = () => {
    if (!refused) told.refused();
    refused = true;
  };

  const write = () => {
    resting.stop();
    if (heldBack || !waiting) return;
    const { name, value } = waiting;
    waiting = null;
    const text = JSON.stringify(value);
    if (text === last) return;
    try {
      localStorage.setItem(name, text);
    } catch {
      return refuse();
    }
    last = text;
    if (refused) told.keptAgain();
    refused = false;
  };

  const resting = onceResting(write);
  globalThis.addEventListener?.('pagehide', write);
  globalThis.document?.addEventListener('visibilitychange', write);
  globalThis.addEventListener?.('storage', (event) => {
    if ((event as StorageEvent).key !== place) return;
    heldBack = true;
    last = null;
    told.elsewhere();
  });

  return {
    asKept: (value) => {
      last = JSON.stringify(value);
    },
    keepHere: () => {
      heldBack = false;
      write();
    },
    getItem: (name) => {
      try {
        const text = localStorage.getItem(name);
        return text === null ? null : readStored<S>(text);
      } catch {
        // Storage switched off: refused when something is to be written, not before anything has been done.
        return null;
      }
    },
    setItem: (name, value) => {
      waiting = { name, value };
      resting.soon(REST);
    },
    removeItem: (name) => {
      waiting = null;
      try {
        localStorage.removeItem(name);
      } catch {
        refuse();
      }
    },
  };
};

/** Text that is no JSON at all is passed on as damaged state, so that its loss can be told. */
const readStored = <S>(text: string): StorageValue<S> => {
  try {
    const data: unknown = JSON.parse(text);
    if (typeof data === 'object' && data !== null && 'state' in data) return data as StorageValue<S>;
  } catch {
    // Falls through to the damaged state below.
  }
  return { state: null as S, version: 0 };
};
