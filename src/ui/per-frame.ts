import { flushSync } from 'react-dom';
import { inFrame, notInFrame } from './frames.ts';

/** Hands on the latest value at most once a frame. `flush` hands on at once what is still waiting. */
export const perFrame = <T>(
  take: (value: T) => void,
): { readonly push: (value: T) => void; readonly flush: () => void } => {
  let waiting: { readonly value: T } | null = null;
  const flush = () => {
    notInFrame(flush);
    const next = waiting;
    waiting = null;
    // The screen follows at once, so that the table can be painted in the same frame.
    if (next) flushSync(() => take(next.value));
  };
  return {
    push: (value) => {
      if (waiting === null) inFrame(flush);
      waiting = { value };
    },
    flush,
  };
};
