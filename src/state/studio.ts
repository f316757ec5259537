import { temporal } from 'zundo';
import { create } from 'zustand';
import { persist } from 'zustand/middleware';
import { fetchStyle } from '../caps/registry.ts';
import { defaultSpec } from '../design/default-spec.ts';
import { keeping } from './keeping.ts';
import { type Kept, restore, stylesKept, toKeep } from './kept.ts';
import type { Studio } from './state.ts';
import { usualWorn } from './worn-wish.ts';

const first: Studio = {
  wish: defaultSpec,
  good: defaultSpec,
  typed: {},
  stage: 'cap',
  chosen: null,
  lit: null,
  litSeam: null,
  detail: null,
  theme: 'system',
  worn: usualWorn,
  ticks: [],
  moving: null,
  notice: null,
};

const NAME = 'capwright';
const REFUSED = 'This browser keeps nothing for this page: a reload brings back the demo cap.';
const MOST_STEPS = 200;

export const useStudio = create<Studio>()(
  persist(
    temporal((): Studio => first, {
      partialize: ({ wish, good }) => ({ wish, good }),
      equality: (past, present) => past.wish === present.wish,
      limit: MOST_STEPS,
    }),
    {
      name: NAME,
      version: 1,
      storage: keeping<Kept>(() => useStudio.setState({ notice: REFUSED })),
      partialize: toKeep,
      // The styles of what was kept are fetched first: see `wake`.
      skipHydration: true,
      merge: (kept, present) => ({ ...present, ...restore(kept, present) }),
      // Specs carry their own version: whatever the store's was, `restore` reads it.
      migrate: (kept) => kept as Kept,
    },
  ),
);

/** Brings back what was on the table last time, once the rules of its styles are there. */
export const wake = async (): Promise<void> => {
  const kept = await useStudio.persist.getOptions().storage?.getItem(NAME);
  await Promise.all(stylesKept(kept?.state).map(fetchStyle));
  await useStudio.persist.rehydrate();
};

/** Undo and redo of the wish, with how many steps each has. */
export const past = useStudio.temporal;
