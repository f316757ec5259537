import { useMemo, useSyncExternalStore } from 'react';
import { drafted } from '../state/derived.ts';
import { shownIn } from '../state/shown.ts';
import { useStudio } from '../state/studio.ts';
import { inSpareFrame } from './frames.ts';
import { type InShort, inShort } from './in-short.ts';

let told: InShort | null = null;
let next: InShort | null = null;
const listeners = new Set<() => void>();

/** Takes what the painter of the table says of the cap that it shows, to be passed on when there is time; null while it shows none. */
export const tellInShort = (now: InShort | null): void => {
  next = now;
  if (told === null || now === null) passOn();
  else inSpareFrame(passOn);
};

const passOn = (): void => {
  told = next;
  for (const listener of listeners) listener();
};

const onTold = (listener: () => void): (() => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};

/**
 * What is said of the cap on the table, soon after the frame that shows it: while a slider moves, nothing need be drafted for
 * it here. Where no table is painted, it follows from the cap that would be shown.
 */
export const useInShort = (): InShort | null => {
  const now = useSyncExternalStore(onTold, () => told);
  const draft = useStudio((s) => (now === null ? drafted(shownIn(s)) : null));
  const own = useMemo(() => draft && inShort(draft), [draft]);
  return now ?? own;
};
