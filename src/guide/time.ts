/** Minutes in words; from an hour on in half hours: our estimates are no finer. */
export const timeWords = ([quick, careful]: readonly [number, number]): string => {
  if (careful < 60) return `${quick} to ${careful} minutes`;
  const hours = (minutes: number): string => {
    const halves = Math.max(1, Math.round(minutes / 30));
    const whole = Math.floor(halves / 2);
    return `${whole > 0 ? whole : ''}${halves % 2 === 1 ? '½' : ''}`;
  };
  return `${hours(quick)} to ${hours(careful)} hours`;
};
