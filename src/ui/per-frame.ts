import { flushSync } from 'react-dom';
import { inFrame, inFrameAfterAll, notInFrame } from './frames.ts';

/**
 * Hands on the latest value at most once a frame, in two pieces of work: `prepare` does what takes time and gives what is
 * left to do, after which the screen follows at once. `flush` hands on at once what is still waiting.
 */
export const perFrame = <T>(
  prepare: (value: T) => () => void,
): { readonly push: (value: T) => void; readonly flush: () => void } => {
  let waiting: { readonly value: T } | null = null;
  let prepared: (() => void) | null = null;
  const begin = () => {
    const next = waiting;
    waiting = null;
    if (next === null) return;
    prepared = prepare(next.value);
    inFrame(finish);
  };
  const finish = () => {
    const act = prepared;
    prepared = null;
    if (act) flushSync(act);
  };
  return {
    push: (value) => {
      if (waiting === null) inFrameAfterAll(begin);
      waiting = { value };
    },
    flush: () => {
      notInFrame(begin);
      notInFrame(finish);
      finish();
      const next = waiting;
      waiting = null;
      if (next) flushSync(prepare(next.value));
    },
  };
};
