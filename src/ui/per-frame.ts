/** Hands on the latest value at most once a frame. `flush` hands on at once what is still waiting. */
export const perFrame = <T>(
  take: (value: T) => void,
): { readonly push: (value: T) => void; readonly flush: () => void } => {
  let waiting: { readonly value: T } | null = null;
  let frame = 0;
  const flush = () => {
    cancelAnimationFrame(frame);
    frame = 0;
    const next = waiting;
    waiting = null;
    if (next) take(next.value);
  };
  return {
    push: (value) => {
      waiting = { value };
      if (frame === 0) frame = requestAnimationFrame(flush);
    },
    flush,
  };
};
