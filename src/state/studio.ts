import { temporal } from 'zundo';
import { create } from 'zustand';
import { persist } from 'zustand/middleware';
import { defaultSpec } from '../design/default-spec.ts';
import { keeping } from './keeping.ts';
import { type Kept, restore, toKeep } from './kept.ts';
import type { Studio } from './state.ts';

const first: Studio = {
  wish: defaultSpec,
  good: defaultSpec,
  typed: {},
  stage: 'cap',
  chosen: null,
  lit: null,
  detail: null,
  theme: 'system',
  moving: null,
  notice: null,
};

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
      name: 'capwright',
      version: 1,
      storage: keeping<Kept>(() => useStudio.setState({ notice: REFUSED })),
      partialize: toKeep,
      merge: (kept, present) => ({ ...present, ...restore(kept, present) }),
      // Specs carry their own version: whatever the store's was, `restore` reads it.
      migrate: (kept) => kept as Kept,
    },
  ),
);

/** Undo and redo of the wish, with how many steps each has. */
export const past = useStudio.temporal;
