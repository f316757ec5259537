import { temporal } from 'zundo';
import { create } from 'zustand';
import { persist } from 'zustand/middleware';
import { defaultSpec } from '../design/default-spec.ts';
import type { Spec } from '../design/spec.ts';
import type { FieldId } from './field.ts';
import { keeping } from './keeping.ts';
import { type Kept, restore, toKeep } from './kept.ts';
import type { Stage } from './stage.ts';
import type { Typed } from './typed.ts';

export type Theme = 'system' | 'light' | 'dark';

/** Which reckoning lies open beside the table. */
export type Detail = 'inside' | 'crown' | 'tip' | 'seams' | 'piece';

export interface Studio {
  /** What the user asks for, even where it cannot be sewn. */
  readonly wish: Spec;
  /** The last wish that could be drafted: what lies on the table. */
  readonly good: Spec;
  /** Texts as typed, by field. */
  readonly typed: Readonly<Record<string, Typed>>;
  readonly stage: Stage;
  /** The piece chosen, and the piece pointed at, by id. */
  readonly chosen: string | null;
  readonly lit: string | null;
  readonly detail: Detail | null;
  readonly theme: Theme;
  /** The field being changed right now, and what lay on the table before: one drag is one step of undo. */
  readonly moving: { readonly field: FieldId; readonly from: Spec } | null;
  /** A calm word to the user about something that happened outside their work. */
  readonly notice: string | null;
}

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
