import { useEffect, useState } from 'react';
import type { Spec } from '../design/spec.ts';
import { onceResting } from '../state/resting.ts';
import { shownIn } from '../state/shown.ts';
import { useStudio } from '../state/studio.ts';

/** The cap that the table shows, once it has stayed the same for a while, ms: nothing is rendered on the way. */
export const useShownAtRest = (wait: number): Spec => {
  const [rested, setRested] = useState(() => shownIn(useStudio.getState()));
  useEffect(() => {
    const { soon, stop } = onceResting(() => setRested(shownIn(useStudio.getState())));
    const leave = useStudio.subscribe((now, before) => {
      if (shownIn(now) !== shownIn(before)) soon(wait);
    });
    // It may have changed since it was first read.
    soon(0);
    return () => {
      leave();
      stop();
    };
  }, [wait]);
  return rested;
};
