import { flushSync } from 'react-dom';
import { inFrameAfterAll, notInFrame } from './frames.ts';

/** Hands on the latest value at most once a frame, after which the screen follows at once; `flush` hands on now what still waits. */
export const perFrame = <T>(
  act: (value: T) => void,
): { readonly push: (value: T) => void; readonly flush: () => void } => {
  let waiting: { readonly value: T } | null = null;
  const handOn = () => {
    const next = waiting;
    waiting = null;
    if (next !== null) flushSync(() => act(next.value));
  };
  return {
    push: (value) => {
      if (waiting === null) inFrameAfterAll(handOn);
      waiting = { value };
    },
    flush: () => {
      notInFrame(handOn);
      handOn();
    },
  };
};
