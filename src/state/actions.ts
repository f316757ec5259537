import type { ParameterValue } from '../caps/parameter.ts';
import type { Spec } from '../design/spec.ts';
import type { Unit } from '../units.ts';
import { canBeSewn } from './derived.ts';
import { type FieldId, readField, writeField } from './field.ts';
import type { Stage } from './stage.ts';
import type { Detail, Studio, Theme } from './state.ts';
import { past, useStudio } from './studio.ts';
import type { WornWish } from './worn-wish.ts';

const get = useStudio.getState;
const set = (changed: Partial<Studio>): void => {
  useStudio.setState(changed);
};

/** The wish and, if it can be sewn, the last good spec with it. It ends what was tried on. */
export const wishing = (wish: Spec) =>
  canBeSewn(wish) ? { wish, good: wish, trial: null } : { wish, trial: null };

/**
 * Changes a field while it is being moved: by a slider, or letter by letter. All changes of one field until `settle`
 * are one step of undo, and the table shows what lay there before as a ghost.
 */
export const change = (field: FieldId, value: ParameterValue): void => {
  if (get().moving?.field !== field) settle();
  const before = get();
  const wish = writeField(before.wish, field, value);
  if (wish === before.wish) return;
  set({ ...wishing(wish), moving: before.moving ?? { field, wished: before.wish, from: before.good } });
  // The first change is the step; those that follow are part of it.
  if (before.moving === null) past.getState().pause();
};

/** The slider rests, or the field is left: what is there now is a step of its own. */
export const settle = (): void => {
  if (get().moving === null) return;
  past.getState().resume();
  set({ moving: null });
};

/** Changes a field at once: a choice, a switch, a button. */
export const put = (field: FieldId, value: ParameterValue): void => {
  change(field, value);
  settle();
};

/** Takes what was typed, word for word, and the value it was understood as, if any. */
export const type = (field: FieldId, text: string, value: ParameterValue | undefined): void => {
  const understood = value !== undefined;
  if (understood) change(field, value);
  const { wish, typed } = get();
  const entry = { text, value: readField(wish, field), unit: wish.unit, understood };
  set({ typed: { ...typed, [field]: entry } });
};

/** Forgets what was typed into a field, so that it shows its value again. */
export const forgetTyped = (field: FieldId): void => {
  const { [field]: _, ...typed } = get().typed;
  set({ typed });
};

/** Switches units everywhere; a home paper of the other system follows, other papers stay. */
export const putUnit = (unit: Unit): void => {
  settle();
  const { wish } = get();
  if (wish.unit === unit) return;
  const { paper } = wish.paper;
  const follows =
    unit === 'in' && paper === 'a4' ? 'letter' : unit === 'cm' && paper === 'letter' ? 'a4' : paper;
  set(wishing({ ...wish, unit, paper: { ...wish.paper, paper: follows } }));
};

/** Takes off what was tried on. False where nothing was. */
export const putBack = (): boolean => {
  const tried = get().trial !== null;
  if (tried) set({ trial: null });
  return tried;
};

/** Takes the last step back. What is tried on is none yet: it alone is put back first. */
export const undo = (): void => {
  settle();
  if (!putBack()) past.getState().undo();
};

export const redo = (): void => {
  settle();
  putBack();
  past.getState().redo();
};

export const goTo = (stage: Stage): void => {
  settle();
  set({ stage });
};

export const choose = (chosen: string | null): void => set({ chosen });
export const light = (lit: string | null): void => {
  if (get().lit !== lit) set({ lit });
};
export const lightSeam = (litSeam: string | null): void => {
  if (get().litSeam !== litSeam) set({ litSeam });
};
export const putWorn = (changed: Partial<WornWish>): void => set({ worn: { ...get().worn, ...changed } });
/** Opens one reckoning beside the table, or closes it. */
export const open = (detail: Detail | null): void => set({ detail });
export const putTheme = (theme: Theme): void => set({ theme });
export const dismissNotice = (): void => set({ notice: null });
