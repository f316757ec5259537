export interface Resting {
  /** Does it this much later, ms, instead of when it was to be done before. */
  readonly soon: (wait: number) => void;
  /** Leaves it undone. */
  readonly stop: () => void;
}

/**
 * Something done once the hand rests. While it moves, the clock that runs is left running and looks again when it goes off:
 * to set one anew at every move would cost a slider more than its own work.
 */
export const onceResting = (act: () => void): Resting => {
  let due = 0;
  let clock: { readonly timer: ReturnType<typeof setTimeout>; readonly off: number } | null = null;

  const stop = (): void => {
    if (clock !== null) clearTimeout(clock.timer);
    clock = null;
  };
  const set = (): void => {
    clock = { timer: setTimeout(goOff, due - performance.now()), off: due };
  };
  const goOff = (): void => {
    clock = null;
    if (performance.now() < due) set();
    else act();
  };
  const soon = (wait: number): void => {
    due = performance.now() + wait;
    if (clock !== null && clock.off <= due) return;
    stop();
    set();
  };
  return { soon, stop };
};
