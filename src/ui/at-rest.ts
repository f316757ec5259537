import { onceResting } from '../state/resting.ts';

/** Hands on the first value at once, and from then on the latest once no other has come for a while, ms. */
export const atRest = <T>(act: (value: T) => void, wait: number) => {
  let latest: { readonly value: T } | null = null;
  const { soon, stop } = onceResting(() => latest && act(latest.value));
  return {
    push: (value: T): void => {
      if (latest === null) act(value);
      else soon(wait);
      latest = { value };
    },
    stop,
  };
};
