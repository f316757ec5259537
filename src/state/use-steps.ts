import { useStore } from 'zustand';
import { past, useStudio } from './studio.ts';

/** How many steps can be taken back, and how many forward again. */
export const useSteps = (): { readonly back: number; readonly forward: number } => {
  // The history keeps its lists and changes them in place, so their lengths are read when anything of it changes too.
  useStudio((s) => s.wish);
  useStudio((s) => s.shelf);
  useStudio((s) => s.heads);
  const back = useStore(past, (s) => s.pastStates.length);
  const forward = useStore(past, (s) => s.futureStates.length);
  return { back, forward };
};
