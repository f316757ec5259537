let presses = 0;

/** Counts a press that has to wait for something. Gives whether no other has come since: the last one counts. */
export const lastPress = (): (() => boolean) => {
  presses += 1;
  const own = presses;
  return () => own === presses;
};
