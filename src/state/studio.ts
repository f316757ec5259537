import { temporal } from 'zundo';
import { create } from 'zustand';
import { persist } from 'zustand/middleware';
import { fetchStyle } from '../caps/registry.ts';
import { defaultSpec } from '../design/default-spec.ts';
import { demoHeads } from '../design/demo-band.ts';
import { keeping } from './keeping.ts';
import { type Kept, restore, stylesKept, toKeep } from './kept.ts';
import { usualLay } from './lay-choice.ts';
import { demoShelf, FIRST_CAP } from './shelved.ts';
import type { Studio } from './state.ts';
import { usualWorn } from './worn-wish.ts';

const first: Studio = {
  wish: defaultSpec,
  good: defaultSpec,
  trial: null,
  capId: FIRST_CAP,
  shelf: demoShelf,
  heads: demoHeads,
  typed: {},
  stage: 'cap',
  chosen: null,
  lit: null,
  litSeam: null,
  detail: null,
  theme: 'system',
  worn: usualWorn,
  lay: usualLay,
  ticks: {},
  moving: null,
  notice: null,
  elsewhere: false,
};

const NAME = 'capwright';
const REFUSED =
  'This browser does not keep what you change now: a reload loses it. The shelf can save all caps as a file.';
const say = (notice: string | null): void => {
  useStudio.setState({ notice });
};
const MOST_STEPS = 200;
const VERSION = 1;
const storage = keeping<Kept>(NAME, {
  refused: () => say(REFUSED),
  keptAgain: () => {
    if (useStudio.getState().notice === REFUSED) say(null);
  },
  elsewhere: () => useStudio.setState({ elsewhere: true }),
});

export const useStudio = create<Studio>()(
  persist(
    temporal((): Studio => first, {
      partialize: ({ wish, good, capId, shelf, heads }) => ({ wish, good, capId, shelf, heads }),
      equality: (past, present) =>
        past.wish === present.wish && past.shelf === present.shelf && past.heads === present.heads,
      limit: MOST_STEPS,
    }),
    {
      name: NAME,
      version: VERSION,
      storage,
      partialize: toKeep,
      // The styles of what was kept are fetched first: see `wake`.
      skipHydration: true,
      merge: (kept, present) => ({ ...present, ...restore(kept, present) }),
      // Specs carry their own version: whatever the store's was, `restore` reads it.
      migrate: (kept) => kept as Kept,
    },
  ),
);

/** Brings back what was on the table last time, once the rules of its styles are there or cannot be had. */
export const wake = async (): Promise<void> => {
  const kept = await storage.getItem(NAME);
  await Promise.allSettled(stylesKept(kept?.state).map(fetchStyle));
  await useStudio.persist.rehydrate();
  storage.asKept({ state: toKeep(useStudio.getState()), version: VERSION });
};

/** Keeps what is in this tab in the place of what another kept. To take what the other kept is to reload the page. */
export const keepHere = (): void => {
  useStudio.setState({ elsewhere: false });
  storage.keepHere();
};

/** Undo and redo of the wish, the shelf and the head cards, with how many steps each has. */
export const past = useStudio.temporal;
