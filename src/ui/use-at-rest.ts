import { useEffect, useState } from 'react';
import { onceResting } from '../state/resting.ts';
import type { Studio } from '../state/state.ts';
import { useStudio } from '../state/studio.ts';

/** What the store holds, once that has stayed the same for a while, ms: nothing is rendered on the way. `of` stays the same. */
export const useAtRest = <T>(of: (studio: Studio) => T, wait: number): T => {
  const [rested, setRested] = useState(() => of(useStudio.getState()));
  useEffect(() => {
    const { soon, stop } = onceResting(() => setRested(() => of(useStudio.getState())));
    const leave = useStudio.subscribe((now, before) => {
      if (of(now) !== of(before)) soon(wait);
    });
    // It may have changed since it was first read.
    soon(0);
    return () => {
      leave();
      stop();
    };
  }, [of, wait]);
  return rested;
};
