import { useEffect, useState } from 'react';
import type { Spec } from '../design/spec.ts';
import { onceResting } from '../state/resting.ts';
import { useStudio } from '../state/studio.ts';

/** The last cap that can be sewn, once it has stayed the same for a while, ms: nothing is rendered on the way. */
export const useGoodAtRest = (wait: number): Spec => {
  const [rested, setRested] = useState(() => useStudio.getState().good);
  useEffect(() => {
    const { soon, stop } = onceResting(() => setRested(useStudio.getState().good));
    const leave = useStudio.subscribe((now, before) => {
      if (now.good !== before.good) soon(wait);
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
